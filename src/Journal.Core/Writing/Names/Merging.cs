using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>Makes two tools one that were written by two names.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="journal">The journal as read.</param>
public sealed class Merging(string folder, MakerJournal journal)
{
    private readonly NamedFiles files = new(folder, journal);

    /// <summary>
    /// Puts one tool's name in the place of another's. Where both stand in one list it stands there once; the line of the one
    /// that goes stays in the crib as a remark.
    /// </summary>
    /// <param name="old">The name that goes.</param>
    /// <param name="into">The name that stays, of a tool that the crib or an entry defines.</param>
    public NameOutcome Tool(string old, string into)
    {
        var known = journal.Tools.Select(tool => tool.Id.Value).Concat(journal.Entries.SelectMany(entry => entry.Jobs).SelectMany(job => job.Tools).Select(tool => tool.Value)).Distinct().ToList();
        if (new[] { old, into }.FirstOrDefault(one => !known.Contains(one)) is { } stranger)
        {
            return NameOutcome.Refused($"There is no tool `{stranger}`. {Suggestion.For(stranger, known, "tools")}");
        }

        if (old == into)
        {
            return NameOutcome.Refused($"`{old}` is one tool already; nothing was changed.");
        }

        if (journal.Tools.FirstOrDefault(tool => tool.Id.Value == into && tool.IsListed) is null)
        {
            return NameOutcome.Refused($"Neither the crib nor an entry says what `{into}` is. List it first, with `journal add tool {into}`.");
        }

        if (journal.Tools.FirstOrDefault(tool => tool.Id.Value == old)?.DefinedIn is { } home)
        {
            return NameOutcome.Refused($"`{old}` was made in {home}, which says what it is. {(journal.Tools.First(tool => tool.Id.Value == into).DefinedIn is null ? $"Merge the other way round: `journal merge tool {into} {old}`." : "Both were made in entries, so they are two tools.")}");
        }

        var formerly = journal.Tools.FirstOrDefault(tool => tool.Id.Value == old)?.Formerly ?? [];
        return Merge(old, into, [.. formerly.Where(name => name != into), old]);
    }

    private NameOutcome Merge(string old, string into, IReadOnlyList<string> formerly)
    {
        var (found, unreadable) = files.Holding([old, into]);
        if (unreadable is not null)
        {
            return NameOutcome.Refused($"{unreadable} cannot be read, and the name may stand in it. `journal check` says what is wrong there; nothing was changed.");
        }

        var changes = new List<FileChange>();
        foreach (var file in found)
        {
            var splices = new List<Splice>();
            foreach (var use in file.Uses.Where(use => use.Kind == NameKind.Tool && (use.Name == old || (use.Name == into && use.IsDefinition))))
            {
                if (!file.SaysPlainly(use) || Splices(file, use, old, into, formerly) is not { } some)
                {
                    return NameOutcome.Refused($"{file.File}:{file.LineOf(use.Start)}: the tool stands there in a way that this program does not dare to touch. Change it by hand; nothing was changed.");
                }

                splices.AddRange(some);
            }

            if (splices.Count > 0)
            {
                changes.Add(file.With(splices));
            }
        }

        return new NameOutcome(new NameChange(changes, []), "");
    }

    private static IReadOnlyList<Splice>? Splices(NamedFile file, NameUse use, string old, string into, IReadOnlyList<string> formerly) => use switch
    {
        { IsDefinition: true } when use.Name == into => FormerName.Put(file.Yaml, use.Holder!, formerly) is { } kept ? [.. kept.Select(splice => splice.Behind(file.Front))] : null,
        { IsDefinition: true } => AsRemark(file, use.Holder!),
        { Holder: SourceList list } when list.Nodes.Any(node => node is SourceText { } text && text.Text == into) => WithoutItem(file, list, use),
        _ => [new Splice(use.Start, old.Length, into)],
    };

    // A line of the crib is never lost: it stays where it is, with a sign before it. A crib in brackets has no such lines.
    private static List<Splice>? AsRemark(NamedFile file, SourceNode tool)
    {
        var first = file.Yaml.LastIndexOf('\n', tool.Start) + 1;
        if (!file.Yaml[first..tool.Start].Trim().StartsWith('-'))
        {
            return null;
        }

        var splices = new List<Splice>();
        for (var at = first; at >= 0 && at < tool.End; at = file.Yaml.IndexOf('\n', at) is >= 0 and var end ? end + 1 : -1)
        {
            splices.Add(Splice.At(file.Front + at, "# "));
        }

        return splices;
    }

    private static IReadOnlyList<Splice>? WithoutItem(NamedFile file, SourceList list, NameUse use)
    {
        var index = list.Nodes.Index().First(node => file.Front + node.Item.Start <= use.Start && use.Start < file.Front + node.Item.End).Index;
        if (!list.IsInBrackets)
        {
            var line = file.Yaml.LastIndexOf('\n', list.Nodes[index].Start) + 1;
            var end = file.Yaml.IndexOf('\n', list.Nodes[index].End);
            return [new Splice(file.Front + line, (end < 0 ? file.Yaml.Length : end + 1) - line, "")];
        }

        var (start, stop) = index > 0 ? (list.Nodes[index - 1].End, list.Nodes[index].End) : (list.Nodes[0].Start, list.Nodes[1].Start);
        return [new Splice(file.Front + start, stop - start, "")];
    }
}
