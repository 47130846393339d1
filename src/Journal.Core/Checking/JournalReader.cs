using Journal.Core.Model;
using Journal.Core.Parsing;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Checking;

/// <summary>What reading a journal gave: the journal, and every problem in the order of files and lines.</summary>
/// <param name="Journal">What could be read; null where <c>journal.yaml</c> is not there or cannot be read.</param>
/// <param name="Problems">All problems of all files.</param>
public sealed record JournalReading(MakerJournal? Journal, IReadOnlyList<Problem> Problems)
{
    /// <summary>Whether something stops publishing.</summary>
    public bool HasErrors => Journal is null || Problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>Whether something keeps the exit status from being 0.</summary>
    public bool IsFlawed => Journal is null || Problems.Any(problem => problem.Severity != Severity.Warning);
}

/// <summary>Reads a journal folder.</summary>
public static class JournalReader
{
    /// <summary>
    /// Reads everything that the maker wrote, holds the files against each other and against the figures that follow from
    /// them. Nothing written in them makes this throw: whatever is wrong comes back as a problem.
    /// </summary>
    /// <param name="root">The folder that holds <c>journal.yaml</c>.</param>
    /// <param name="today">The date after which an entry lies in the future.</param>
    /// <param name="kept">What was read of the folder before, and what is to be kept for the next time; null to read all and keep nothing.</param>
    /// <param name="typed">A file that is being typed and counts instead of the saved one; null for none.</param>
    public static JournalReading Read(string root, DateOnly today, FilesRead? kept = null, TypedFile? typed = null)
    {
        var parsed = JournalParser.Parse(root, today, kept, typed);
        if (parsed.Journal is { } journal)
        {
            Dimensions.Check(journal, parsed.Values, parsed.Log);
            HiddenTargets.Check(journal, today, parsed.Log);
            Verdicts.Check(journal, parsed.Log);
        }

        return new JournalReading(parsed.Journal, parsed.Problems());
    }
}
