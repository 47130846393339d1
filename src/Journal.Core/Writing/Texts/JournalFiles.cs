using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Writing.Texts;

/// <summary>What a file of a journal holds.</summary>
public enum JournalFileKind
{
    /// <summary><c>journal.yaml</c>.</summary>
    Journal,

    /// <summary><c>tools.yaml</c>.</summary>
    Tools,

    /// <summary>A plan.</summary>
    Plan,

    /// <summary>A <c>build.yaml</c>.</summary>
    Build,

    /// <summary>An entry.</summary>
    Entry,
}

/// <summary>A text file of a journal.</summary>
/// <param name="File">The file, relative to the journal, with <c>/</c>.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Build">The id of the build that it belongs to; null for none.</param>
public sealed record JournalFile(string File, JournalFileKind Kind, string? Build = null)
{
    /// <summary>The id of what it holds, which is part of its name: of an entry, a plan or a build.</summary>
    public string Id => Kind == JournalFileKind.Build ? Build! : Path.GetFileNameWithoutExtension(File);
}

/// <summary>The text files that a journal is read from.</summary>
public static class JournalFiles
{
    /// <summary>All of them: the journal's own, then plans, then builds, each with its entries, in the order of their names.</summary>
    /// <param name="root">The folder that holds <c>journal.yaml</c>.</param>
    public static IReadOnlyList<JournalFile> Of(string root)
    {
        var folder = JournalFolder.Survey(root, new ProblemLog());
        return
        [
            .. folder.HasJournal ? [new JournalFile("journal.yaml", JournalFileKind.Journal)] : Array.Empty<JournalFile>(),
            .. folder.HasTools ? [new JournalFile("tools.yaml", JournalFileKind.Tools)] : Array.Empty<JournalFile>(),
            .. folder.Plans.Select(plan => new JournalFile(plan, JournalFileKind.Plan)),
            .. folder.Builds.SelectMany(build => new[] { new JournalFile($"{build}/build.yaml", JournalFileKind.Build, JournalFolder.NameOf(build)) }
                .Concat(folder.Entries.Where(entry => entry.Build == build).Select(entry => new JournalFile(entry.Entry, JournalFileKind.Entry, JournalFolder.NameOf(build))))),
        ];
    }
}
