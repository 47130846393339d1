namespace Journal.Bench.Pages;

/// <summary>Entries with pictures.</summary>
/// <param name="Frame">What all pages have.</param>
/// <param name="Entries">The entries, the latest first.</param>
public sealed record PicturesPage(Frame Frame, IReadOnlyList<PictureEntryRow> Entries);

/// <summary>An entry with pictures.</summary>
/// <param name="Address">Where its pictures are.</param>
/// <param name="Title">The entry.</param>
/// <param name="Date">Its day.</param>
/// <param name="Pictures">How many it has, in words.</param>
/// <param name="Wordless">How many of them say nothing yet, in words; null for none.</param>
public sealed record PictureEntryRow(string Address, string Title, string Date, string Pictures, string? Wordless);

/// <summary>The pictures of an entry.</summary>
public sealed record PictureEntryPage
{
    /// <summary>What all pages have.</summary>
    public required Frame Frame { get; init; }

    /// <summary>The entry's title.</summary>
    public required string Title { get; init; }

    /// <summary>Its id in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>Its day.</summary>
    public required string Date { get; init; }

    /// <summary>What came of the last form; null for nothing.</summary>
    public ToldView? Told { get; init; }

    /// <summary>The pictures in their order.</summary>
    public required IReadOnlyList<PictureForm> Pictures { get; init; }

    /// <summary>Other entries of the build, the nearest in time first.</summary>
    public required IReadOnlyList<ChoiceView> Entries { get; init; }

    /// <summary>The entry before in the list of those with pictures; null for none.</summary>
    public Way? Before { get; init; }

    /// <summary>The entry after; null for none.</summary>
    public Way? After { get; init; }

    /// <summary>The address of the page's own script.</summary>
    public required string Script { get; init; }
}

/// <summary>A picture in the form.</summary>
/// <param name="Number">Its number, from 0.</param>
/// <param name="Name">Its file's name.</param>
/// <param name="Id">Its id in addresses and in the form.</param>
/// <param name="Caption">What it shows.</param>
/// <param name="Alt">What it shows, for those who cannot see it.</param>
/// <param name="IsNever">Whether it is never published.</param>
/// <param name="Later">Why it is not published yet; null where it is, or never is.</param>
/// <param name="Marks">Its balloons, a line each: how far across, how far down, what.</param>
public sealed record PictureForm(int Number, string Name, string Id, string Caption, string Alt, bool IsNever, string? Later, string Marks);
