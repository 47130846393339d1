using Journal.Site.Html;

namespace Journal.Site.Pages;

/// <summary>What every page has around its own contents.</summary>
public sealed record PageFrame
{
    /// <summary>The page's own title.</summary>
    public required string Title { get; init; }

    /// <summary>What the page is about, in a sentence.</summary>
    public required string Description { get; init; }

    /// <summary>The way up to the root of the site: empty, <c>../</c> or <c>../../</c>.</summary>
    public required string Root { get; init; }

    /// <summary>The kind of page, for the style sheet.</summary>
    public required string Kind { get; init; }

    /// <summary>Whether a shop copy of it needs the small setting to stay on one page.</summary>
    public bool IsLong { get; init; }

    /// <summary>The journal's title.</summary>
    public required string Journal { get; init; }

    /// <summary>The maker's pen name; empty where there is none.</summary>
    public required string Maker { get; init; }

    /// <summary>The way through the site.</summary>
    public required IReadOnlyList<WayView> Ways { get; init; }

    /// <summary>The page's absolute address; null where the site has none.</summary>
    public string? Canonical { get; init; }

    /// <summary>The address, from the root of the site, that viewers are led to; null where they stay.</summary>
    public string? MovedTo { get; init; }

    /// <summary>What kind of thing the page is where it is shared, in the words of the Open Graph protocol.</summary>
    public string ShareType { get; init; } = "website";

    /// <summary>The picture to show where the page is shared, its address made absolute; null where there is none, or the site has no address.</summary>
    public PhotoView? SharePicture { get; init; }

    /// <summary>What the page says of itself to machines; null for nothing.</summary>
    public DataBlock? StructuredData { get; init; }

    /// <summary>The pages above this one.</summary>
    public IReadOnlyList<LinkView> Crumbs { get; init; } = [];

    /// <summary>The title block at the foot of the sheet; null where the page is no sheet.</summary>
    public TitleBlockView? TitleBlock { get; init; }
}

/// <summary>A link of the site's own navigation.</summary>
public sealed record WayView(string Text, string Address, bool IsHere);

/// <summary>A link, by its address from the root of the site; without an address, plain text.</summary>
public sealed record LinkView(string Text, string? Address);

/// <summary>A figure at the head of a page.</summary>
public sealed record FactView(string Label, string Value, string? Note = null);

/// <summary>A date for machines and for people.</summary>
public sealed record DateView(string Iso, string Text)
{
    /// <summary>A date as ISO 8601 writes it.</summary>
    public static DateView Of(DateOnly date) => new(Show.Date(date), Show.Date(date));

    /// <summary>A date in full.</summary>
    public static DateView InFull(DateOnly date) => new(Show.Date(date), Show.LongDate(date));
}

/// <summary>
/// The title block: data fields of ISO 7200:2004, of which legal owner, identification number, date of issue, sheet
/// number, title, approval person, creator and document type are mandatory.
/// </summary>
public sealed record TitleBlockView
{
    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Supplementary title.</summary>
    public string? Supplementary { get; init; }

    /// <summary>Document type.</summary>
    public required string DocumentType { get; init; }

    /// <summary>Document status.</summary>
    public string Status { get; init; } = "Released";

    /// <summary>Identification number.</summary>
    public required string Identification { get; init; }

    /// <summary>Date of issue; null where nothing is dated yet.</summary>
    public DateView? Issued { get; init; }

    /// <summary>Sheet number.</summary>
    public string Sheet { get; init; } = "1";

    /// <summary>Fields that a part sheet has besides.</summary>
    public IReadOnlyList<FactView> More { get; init; } = [];
}

/// <summary>An entry in a list of entries.</summary>
public sealed record EntryLineView(DateView Date, LinkView Link, string Hours, string About);

/// <summary>A mistake or lesson as a remark.</summary>
public sealed record RemarkView(string Kind, string Heading, LinkView Text, string? Cost, LinkView? From = null, DateView? Date = null);

/// <summary>A tool in a list, with a word on it.</summary>
public sealed record ToolLineView(LinkView Tool, string? Note);

/// <summary>An item balloon: number, part and how far it is.</summary>
/// <param name="Item">The number in the balloon.</param>
/// <param name="Title">The part's title.</param>
/// <param name="Address">The part sheet; null where it is not shown.</param>
/// <param name="State">The style: <c>done</c>, <c>begun</c> or <c>to-go</c>.</param>
/// <param name="Words">The same in words.</param>
public sealed record BalloonView(string Item, string Title, string? Address, string State, string Words);

/// <summary>A picture as a page shows it.</summary>
public sealed record PhotoView
{
    /// <summary>The picture itself in all its sizes, resolved for one page.</summary>
    public required SafeHtml Picture { get; init; }

    /// <summary>The address of its largest size, from the root of the site.</summary>
    public required string Largest { get; init; }

    /// <summary>The width of its largest size in pixels.</summary>
    public required int Width { get; init; }

    /// <summary>The height of its largest size in pixels.</summary>
    public required int Height { get; init; }

    /// <summary>What it shows, for those who do not see it.</summary>
    public required string Alt { get; init; }

    /// <summary>The colour that stands in while it loads.</summary>
    public required string Ground { get; init; }

    /// <summary>What it shows, for those who do; null for no caption.</summary>
    public string? Caption { get; init; }

    /// <summary>Numbered balloons on it.</summary>
    public IReadOnlyList<MarkView> Marks { get; init; } = [];

    /// <summary>The entry that shows it.</summary>
    public LinkView? From { get; init; }
}

/// <summary>A numbered balloon on a picture; places in per cent, the balloon a little away from what it points to.</summary>
public sealed record MarkView(int Number, string X, string Y, string BalloonX, string BalloonY, string Text);

/// <summary>A trial as a page shows it.</summary>
public sealed record TrialView(DateView Date, LinkView Entry, string On, string Details, string? Result);

/// <summary>A snag as a page shows it.</summary>
public sealed record SnagView(LinkView Text, DateView Since);

/// <summary>A caution: one line, and the rest for those who want it.</summary>
/// <param name="Title">The line.</param>
/// <param name="For">The materials that it is for; null for all.</param>
/// <param name="Happens">What can happen.</param>
/// <param name="Done">What is usually done.</param>
/// <param name="Source">Where that is published.</param>
public sealed record CautionView(string Title, string? For, string Happens, string Done, string Source);

/// <summary>A text of an entry as HTML, already resolved for one page.</summary>
public sealed record ProseView(SafeHtml Html);
