using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Told;

namespace Journal.Core.Import;

/// <summary>
/// Reads the keys that notes say in plain words: those that are sure. What would add a line to another file (tools made, new tools, new
/// parts) is left to the maker, as is what the journal cannot hold.
/// </summary>
/// <param name="journal">The journal.</param>
/// <param name="build">The build that the notes are of.</param>
public sealed class NoteWords(MakerJournal journal, Build build)
{
    private readonly ToldLimits limits = new(journal, build) { TakesGaps = true };

    /// <summary>What a note says; a job without its hours too.</summary>
    /// <param name="text">The note.</param>
    /// <param name="date">Its day.</param>
    public ToldEvening Read(string text, DateOnly date) => ToldEvening.Of(Sure(text, date), date, limits);

    /// <summary>What a note says of work that a row of a table tells already: the row's own part, operation and hours stand.</summary>
    /// <param name="text">The note.</param>
    /// <param name="date">The day.</param>
    /// <param name="job">What the row tells; empty for what it does not.</param>
    public ToldEvening Read(string text, DateOnly date, ProposedJob job)
    {
        var sure = Sure(text, date);
        var said = ToldTimes.Together(sure).Jobs is [var only, ..] ? only : new ProposedJob();
        var told = said with
        {
            Parts = job.Parts.Count > 0 ? job.Parts : said.Parts,
            Operations = job.Operations.Count > 0 ? job.Operations : said.Operations,
            Time = job.Time ?? said.Time,
        };
        return ToldEvening.Of(sure with { Jobs = [told], Total = null, TotalWords = [] }, date, limits);
    }

    private Proposal Sure(string text, DateOnly date) => AccountReader.Read(text, journal, build, date) with { Made = [], NewTools = [], NewParts = [], Questions = [] };
}
