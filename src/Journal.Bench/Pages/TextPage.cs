namespace Journal.Bench.Pages;

/// <summary>The journal's text files.</summary>
/// <param name="Frame">What all pages have.</param>
/// <param name="Groups">The files: the journal's own, plans, then each build with its entries.</param>
public sealed record FilesPage(Frame Frame, IReadOnlyList<FileGroup> Groups);

/// <summary>Files that belong together.</summary>
/// <param name="Title">What they belong to.</param>
/// <param name="Files">The files.</param>
public sealed record FileGroup(string Title, IReadOnlyList<FileRow> Files);

/// <summary>A file.</summary>
/// <param name="Address">Where it is opened.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Name">Its name in the journal's folder.</param>
/// <param name="Problems">How many problems it has, in words; null for none.</param>
public sealed record FileRow(string Address, string Title, string Name, string? Problems);

/// <summary>A file as text.</summary>
public sealed record TextPage
{
    /// <summary>What all pages have.</summary>
    public required Frame Frame { get; init; }

    /// <summary>The file's name in the journal's folder.</summary>
    public required string File { get; init; }

    /// <summary>The id by which it is asked for.</summary>
    public required string Id { get; init; }

    /// <summary>Whether it is an entry, with text below its keys.</summary>
    public required bool IsEntry { get; init; }

    /// <summary>The text in the editor.</summary>
    public required string Text { get; init; }

    /// <summary>By which the saved file is known: its digest.</summary>
    public required string Seen { get; init; }

    /// <summary>The file as another program saved it meanwhile; null where none did.</summary>
    public string? Theirs { get; init; }

    /// <summary>What came of the last save; null for nothing.</summary>
    public ToldView? Told { get; init; }

    /// <summary>The problems of the file.</summary>
    public required IReadOnlyList<ProblemView> Problems { get; init; }

    /// <summary>Where the site shows it.</summary>
    public required string Preview { get; init; }

    /// <summary>The address of the editor's script.</summary>
    public required string Editor { get; init; }

    /// <summary>The address of the page's own script.</summary>
    public required string Script { get; init; }
}

/// <summary>A problem of a file.</summary>
/// <param name="Severity">For the look: <c>error</c> or <c>warning</c>.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to do.</param>
/// <param name="Mend">A word that puts it right; null where none is known.</param>
public sealed record ProblemView(string Severity, int Line, int Column, string Message, string Remedy, MendView? Mend);

/// <summary>A word that puts a problem right.</summary>
/// <param name="Line">The line of the wrong word.</param>
/// <param name="Column">Its column.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Word">The right word.</param>
public sealed record MendView(int Line, int Column, int Length, string Word);
