using Journal.Site.Html;

namespace Journal.Bench.Pages;

/// <summary>What all pages have.</summary>
public sealed record Frame
{
    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>The journal's title.</summary>
    public required string Journal { get; init; }

    /// <summary>The style sheet, which comes with the page: one request shows it.</summary>
    public required SafeHtml Style { get; init; }

    /// <summary>The ways to the other pages; none for someone who is not paired.</summary>
    public IReadOnlyList<Way> Ways { get; init; } = [];

    /// <summary>The address of the page's script; null for none.</summary>
    public string? Script { get; init; }

    /// <summary>What each form carries; empty for someone who is not paired.</summary>
    public string Token { get; init; } = "";

    /// <summary>The beginning of the ids of what this page's forms do where no script makes one; each form adds a word of its own.</summary>
    public string Stamp { get; init; } = "";
}

/// <summary>A way to another page.</summary>
/// <param name="Address">Where it leads.</param>
/// <param name="Title">What it is called.</param>
/// <param name="IsHere">Whether it is this page.</param>
public sealed record Way(string Address, string Title, bool IsHere);
