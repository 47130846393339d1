using System.Runtime.CompilerServices;

namespace Journal.Core.Model;

/// <summary>Everything one maker keeps, as read from the journal folder.</summary>
public sealed record MakerJournal
{
    /// <summary>The journal's title.</summary>
    public required string Title { get; init; }

    /// <summary>The journal's lasting identity: given, or made from the title (RFC 9562, version 5).</summary>
    public required Guid Id { get; init; }

    /// <summary>The maker's pen name; empty where none is given.</summary>
    public string Maker { get; init; } = "";

    /// <summary>The unit of lengths where neither reading nor build says another.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Millimetre;

    /// <summary>The currency of every cost, an ISO 4217 code.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>The time zone of the bench by its IANA name; null where none is given.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Where the site will stand, ending with a slash; null for no absolute addresses anywhere.</summary>
    public Uri? Address { get; init; }

    /// <summary>Where the site can be sent to, in the order of the file.</summary>
    public IReadOnlyList<NamedDestination> Destinations { get; init; } = [];

    /// <summary>The words that the journal knows: our own and those that the maker added.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>The tool crib in the order of the file, then tools that entries define with <c>made</c>.</summary>
    public IReadOnlyList<Tool> Tools { get; init; } = [];

    /// <summary>The builds by id.</summary>
    public IReadOnlyList<Build> Builds { get; init; } = [];

    /// <summary>The plans by id.</summary>
    public IReadOnlyList<Plan> Plans { get; init; } = [];

    /// <summary>
    /// The build that a plan has become: the one of the same name. The plan stays as the record of what was foreseen;
    /// null while it is not begun.
    /// </summary>
    public Build? BegunAs(Plan plan) => Builds.FirstOrDefault(build => build.Id.Value == plan.Id.Value);

    /// <summary>All entries of all builds, by date, then build, then id.</summary>
    public IReadOnlyList<Entry> Entries => InOrder.GetValue(Builds, static builds =>
        [.. builds.SelectMany(build => build.Entries).OrderBy(entry => entry.Date).ThenBy(entry => entry.Build).ThenBy(entry => entry.Id)]);

    /// <summary>The date of the latest entry: the “today” of all published figures; null in an empty journal.</summary>
    public DateOnly? LatestDate => Builds.SelectMany(build => build.Entries).Select(entry => (DateOnly?)entry.Date).Max();

    // Many figures ask; entries are put in order once for each list of builds.
    private static readonly ConditionalWeakTable<IReadOnlyList<Build>, IReadOnlyList<Entry>> InOrder = [];
}
