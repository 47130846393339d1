using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>
/// Makes several parts of one: their time and their guesses are shared by weight. Readings, links, purchases and fits go to
/// the first.
/// </summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="journal">The journal as read.</param>
public sealed class Splitting(string folder, MakerJournal journal)
{
    private readonly NamedFiles files = new(folder, journal);

    /// <summary>Splits a part of a build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="old">The part.</param>
    /// <param name="parts">What it becomes, two or more; the part's own name may be among them.</param>
    public NameOutcome Part(Build build, string old, IReadOnlyList<SplitPart> parts)
    {
        if (build.Parts.FirstOrDefault(part => part.Id.Value == old) is not { } part)
        {
            return NameOutcome.Refused($"{build.Title} has no part `{old}`. {Suggestion.For(old, [.. build.Parts.Select(one => one.Id.Value)], "parts")}");
        }

        return WhyNot(build, old, parts) is { } why ? NameOutcome.Refused(why) : Split(build, part, parts);
    }

    private static string? WhyNot(Build build, string old, IReadOnlyList<SplitPart> parts)
    {
        foreach (var name in parts.Select(part => part.Name))
        {
            if (!Id<Part>.HasRightForm(name) || FileNames.IsReserved(name) || name == "whole")
            {
                return $"`{name}` cannot be the id of a part. Write lower-case words joined by hyphens, such as gib-screw.";
            }

            if (name != old && build.HasPart(new(name)))
            {
                return $"{build.Title} has a part `{name}` already.";
            }

            if (parts.Count(part => part.Name == name) > 1)
            {
                return $"`{name}` is named twice.";
            }
        }

        return parts.Count < 2 ? $"Name at least two parts that `{old}` becomes; it may be one of them." : null;
    }

    private NameOutcome Split(Build build, Part part, IReadOnlyList<SplitPart> parts)
    {
        var old = part.Id.Value;
        var (found, unreadable) = files.Holding([old]);
        if (unreadable is not null)
        {
            return NameOutcome.Refused($"{unreadable} cannot be read, and the part may stand in it. `journal check` says what is wrong there; nothing was changed.");
        }

        var changes = new List<FileChange>();
        foreach (var file in found)
        {
            var uses = file.Uses.Where(use => use.Kind == NameKind.Part && use.Build == build.Id.Value && use.Name == old).ToList();
            var done = new HashSet<int>();
            var splices = new List<Splice>();
            foreach (var use in uses)
            {
                if (!file.SaysPlainly(use) || Splices(file, use, part, parts) is not { } some)
                {
                    return NameOutcome.Refused($"{file.File}:{file.LineOf(use.Start)}: the part stands there in a way that this program does not dare to touch. Change it by hand; nothing was changed.");
                }

                splices.AddRange(some.Where(splice => splice.Length == 0 || done.Add(splice.Start)));
            }

            if (splices.Exists(splice => splice.Text != file.Text.Substring(splice.Start, splice.Length)))
            {
                changes.Add(file.With(splices));
            }
        }

        return new NameOutcome(new NameChange(changes, []), "");
    }

    private static IReadOnlyList<Splice>? Splices(NamedFile file, NameUse use, Part part, IReadOnlyList<SplitPart> parts) => use switch
    {
        { IsDefinition: true } => new SplitLine(file, use, part, parts).Splices(),
        { Key: "part", Holder: SourceList or SourceMap } when TimeOf(use.Holder, use.Name) is { } whole => [new Splice(file.Front + whole.Start, whole.End - whole.Start, Shares(whole, use.Name, parts))],
        { Key: "finished" or "covers" } => Each(file, use, parts),
        _ => [new Splice(use.Start, use.Length, parts[0].Name)],
    };

    // What the time of a job is shared over: a single part, a list, or weights. A reading's own `part` is none of these.
    private static SourceNode? TimeOf(SourceNode holder, string name) => holder switch
    {
        SourceMap map when map["feature"] is not null => null,
        SourceMap map when map["part"] is SourceText single && single.Text == name => single,
        _ => holder,
    };

    private static string Shares(SourceNode whole, string old, IReadOnlyList<SplitPart> parts)
    {
        var sum = parts.Sum(part => part.Weight);
        var before = whole is SourceMap map
            ? map.Pairs.Select(pair => (Name: pair.Key.Text, Weight: WeightOf(pair.Value))).ToList()
            : whole.Items.OfType<SourceText>().Select(item => (Name: item.Text, Weight: 1m)).ToList();
        var after = before.SelectMany(one => one.Name == old ? parts.Select(part => (part.Name, Weight: one.Weight * part.Weight)) : [(one.Name, Weight: one.Weight * sum)]).ToList();
        return after.TrueForAll(one => one.Weight == after[0].Weight)
            ? YamlText.List(after.Select(one => one.Name))
            : YamlText.Map([.. after.Select(one => (one.Name, (string?)one.Weight.ToString("0.####", CultureInfo.InvariantCulture)))]);
    }

    private static decimal WeightOf(SourceNode node) =>
        node is SourceText text && decimal.TryParse(text.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var weight) ? weight : 1;

    // Where one is finished or shown, so are all that it becomes, and as many pieces of each.
    private static IReadOnlyList<Splice>? Each(NamedFile file, NameUse use, IReadOnlyList<SplitPart> parts)
    {
        switch (use.Holder)
        {
            case SourceMap map when map.Pairs.FirstOrDefault(pair => file.Front + pair.Key.Start == use.Start) is { Key: { } key, Value: var value }:
                var pieces = file.Yaml[value.Start..value.End];
                var joint = map.IsInBraces ? ", " : $"\n{new string(' ', ItemKey.Column(file.Yaml, map.Start))}";
                return [new Splice(use.Start, file.Front + value.End - use.Start, string.Join(joint, parts.Select(part => $"{part.Name}: {pieces}")))];
            case SourceList { IsInBrackets: true }:
                return [new Splice(use.Start, use.Length, string.Join(", ", parts.Select(part => part.Name)))];
            case SourceList list:
                return [new Splice(use.Start, use.Length, string.Join($"\n{new string(' ', ItemKey.Column(file.Yaml, list.Start))}- ", parts.Select(part => part.Name)))];
            default:
                return [new Splice(use.Start, use.Length, YamlText.List(parts.Select(part => part.Name)))];
        }
    }
}
