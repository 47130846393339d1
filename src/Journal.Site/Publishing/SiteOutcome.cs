using Journal.Core.Parsing.Problems;

namespace Journal.Site.Publishing;

/// <summary>What was published.</summary>
/// <param name="Builds">How many builds the journal has.</param>
/// <param name="Entries">How many entries it shows.</param>
/// <param name="Pages">How many pages the site has.</param>
/// <param name="Pictures">How many pictures.</param>
/// <param name="Files">How many files in all.</param>
/// <param name="Changed">How many of them had to be written; the others were as they should be.</param>
/// <param name="FrontPage">The file to open.</param>
/// <param name="Problems">Pictures that could not be read.</param>
public sealed record Published(int Builds, int Entries, int Pages, int Pictures, int Files, int Changed, string FrontPage, IReadOnlyList<Problem> Problems);

/// <summary>What became of an order.</summary>
/// <param name="Problems">What reading the journal had to say.</param>
/// <param name="Published">What was published; null where errors stopped it.</param>
public sealed record SiteOutcome(IReadOnlyList<Problem> Problems, Published? Published)
{
    /// <summary>Whether the journal was read for it; else the record of the publish before was enough.</summary>
    internal bool WasRead { get; init; }

    /// <summary>Whether anything keeps the exit status from being 0.</summary>
    public bool IsFlawed => Published is null || Published.Problems.Count > 0 || Problems.Any(problem => problem.Severity != Severity.Warning);
}
