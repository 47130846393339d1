using System.Text.RegularExpressions;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>Finds every name in the YAML of a file by what stands where: the keys of entries, builds, plans, the crib and the journal.</summary>
/// <param name="build">The build that the file belongs to; null for none.</param>
/// <param name="isPart">Whether a word is a part of that build.</param>
/// <param name="front">How much of the file stands before the YAML.</param>
internal sealed partial class NamesInYaml(string? build, Func<string, bool> isPart, int front)
{
    private readonly List<NameUse> uses = [];

    /// <summary>The names in an entry.</summary>
    public IReadOnlyList<NameUse> OfEntry(SourceNode? node)
    {
        if (node is SourceMap entry)
        {
            Job(entry);
            foreach (var job in Maps(entry["jobs"]))
            {
                Job(job);
            }

            Shares(entry["finished"], entry, "finished");
            foreach (var mistake in Maps(entry["mistakes"]))
            {
                Lesson(mistake["lesson"]);
                Names(NameKind.Lesson, mistake["repeats"], mistake, "repeats");
            }

            foreach (var lesson in Maps(entry["lessons"]))
            {
                Lesson(lesson);
            }

            Names(NameKind.Lesson, entry["heeded"], entry, "heeded");
            foreach (var reading in Maps(entry["readings"]))
            {
                Names(NameKind.Part, reading["part"], reading, "part");
                Names(NameKind.Tool, reading["with"], reading, "with");
                Feature(reading["feature"]);
                Suits(reading["required"]);
            }

            foreach (var setting in Maps(entry["settings"]))
            {
                Names(NameKind.Tool, setting["machine"], setting, "machine");
            }

            foreach (var bought in Maps(entry["bought"]))
            {
                Names(bought["for"] is SourceText target && isPart(target.Text) ? NameKind.Part : NameKind.Tool, bought["for"], bought, "for");
            }
        }

        return uses;
    }

    /// <summary>The names in a build or a plan.</summary>
    public IReadOnlyList<NameUse> OfBuild(SourceNode? node)
    {
        if (node is SourceMap file)
        {
            foreach (var part in file["parts"]?.Items ?? [])
            {
                Part(part);
            }

            Keys(NameKind.Operation, file["whole"], "whole");
            foreach (var mate in Maps(file["mates"]))
            {
                Feature(mate["hole"]);
                Feature(mate["shaft"]);
            }

            foreach (var video in Maps(file["videos"]))
            {
                Names(NameKind.Part, video["covers"], video, "covers");
            }
        }

        return uses;
    }

    /// <summary>The names in the crib.</summary>
    public IReadOnlyList<NameUse> OfCrib(SourceNode? node)
    {
        foreach (var tool in (node as SourceList)?.Nodes.OfType<SourceMap>() ?? [])
        {
            Definition(NameKind.Tool, tool["id"], tool);
        }

        return uses;
    }

    /// <summary>The words that the journal adds.</summary>
    public IReadOnlyList<NameUse> OfJournal(SourceNode? node)
    {
        foreach (var operation in (node as SourceMap)?["operations"]?.Items ?? [])
        {
            Definition(NameKind.Operation, operation is SourceMap map ? map["id"] : operation, operation);
        }

        return uses;
    }

    private void Job(SourceMap job)
    {
        Shares(job["part"], job, "part");
        Names(NameKind.Operation, job["operation"], job, "operation");
        Names(NameKind.Tool, job["tools"], job, "tools");
        foreach (var made in job["made"]?.Items ?? [])
        {
            if (made is SourceMap tool)
            {
                Definition(NameKind.Tool, tool["id"], tool);
            }
            else
            {
                Names(NameKind.Tool, made, job["made"]!, "made");
            }
        }
    }

    private void Part(SourceNode part)
    {
        var map = part as SourceMap;
        if (build is not null)
        {
            Definition(NameKind.Part, map is null ? part : map["id"], part);
        }

        Keys(NameKind.Operation, map?["operations"], "operations");
        Keys(NameKind.Operation, map?["guess"] as SourceMap, "guess");
        Keys(NameKind.Operation, map?["reguess"] as SourceMap, "reguess");
        if (map?["like"] is SourceText like && like.Text.Split('/') is [var of, var other])
        {
            var start = Inside(like);
            uses.Add(new NameUse(NameKind.Build, null, of, start, of.Length) { Key = "like" });
            uses.Add(new NameUse(NameKind.Part, of, other, start + of.Length + 1, other.Length) { Key = "like" });
        }
    }

    private void Lesson(SourceNode? lesson)
    {
        if (lesson is SourceMap map)
        {
            Definition(NameKind.Lesson, map["id"], map);
        }
    }

    // One, several, or several with weights or pieces.
    private void Shares(SourceNode? node, SourceNode holder, string key)
    {
        if (node is SourceMap)
        {
            Keys(NameKind.Part, node, key);
        }
        else
        {
            foreach (var item in node?.Items ?? [])
            {
                if (item is SourceMap pieces)
                {
                    Keys(NameKind.Part, pieces, key);
                }
                else
                {
                    Name(NameKind.Part, item as SourceText, node is SourceList ? node : holder, key);
                }
            }
        }
    }

    private void Names(NameKind kind, SourceNode? node, SourceNode holder, string key)
    {
        foreach (var item in node?.Items ?? [])
        {
            Name(kind, item as SourceText, node is SourceList ? node : holder, key);
        }
    }

    private void Keys(NameKind kind, SourceNode? node, string key)
    {
        if (node is SourceMap map)
        {
            foreach (var (name, _) in map.Pairs)
            {
                Name(kind, name, map, key);
            }
        }
        else if (node is not null)
        {
            Names(kind, node, node, key);
        }
    }

    private void Definition(NameKind kind, SourceNode? name, SourceNode holder)
    {
        if (name is SourceText text)
        {
            uses.Add(Use(kind, text, holder, "id") with { IsDefinition = true });
        }
    }

    private void Name(NameKind kind, SourceText? text, SourceNode holder, string key)
    {
        if (text is { Text.Length: > 0 })
        {
            uses.Add(Use(kind, text, holder, key));
        }
    }

    private NameUse Use(NameKind kind, SourceText text, SourceNode holder, string key) =>
        new(kind, kind == NameKind.Part ? build : null, text.Text, Inside(text), text.Text.Length) { Holder = holder, Key = key };

    // `head.bore`: a part, a point and its feature.
    private void Feature(SourceNode? node)
    {
        if (node is SourceText text && text.Text.IndexOf('.', StringComparison.Ordinal) is > 0 and var dot && isPart(text.Text[..dot]))
        {
            uses.Add(new NameUse(NameKind.Part, build, text.Text[..dot], Inside(text), dot) { Key = "feature" });
        }
    }

    // `to suit quill.diameter +0.01/+0.03`.
    private void Suits(SourceNode? node)
    {
        if (node is SourceText text && SuitedPart().Match(text.Text) is { Success: true } match)
        {
            var part = match.Groups["part"];
            uses.Add(new NameUse(NameKind.Part, build, part.Value, Inside(text) + part.Index, part.Length) { Key = "required" });
        }
    }

    private static IEnumerable<SourceMap> Maps(SourceNode? node) => node?.Items.OfType<SourceMap>() ?? [];

    private int Inside(SourceText text) => front + text.Start + (text.IsPlain ? 0 : 1);

    [GeneratedRegex(@"\bsuits?\s+(?<part>[a-z0-9]+(-[a-z0-9]+)*)\.", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex SuitedPart();
}
