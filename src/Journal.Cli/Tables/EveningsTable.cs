using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>The hours by evening, for people.</summary>
internal static class EveningsTable
{
    /// <summary>A line for each share of an evening, the whole at the foot.</summary>
    public static void Print(MakerJournal journal, IReadOnlyList<EveningShare> shares, Printout print)
    {
        if (shares.Count == 0)
        {
            print.Say("No hours then.");
            return;
        }

        var titles = new TitleBook(journal);
        print.Table(
            [Column.Words("Evening"), Column.Words("Build"), Column.Words("Part"), Column.Words("Operation"), Column.Figures("Time"), Column.Words("Kind of time")],
            shares.Select(share => new[]
            {
                Written.Date(share.Date),
                titles.Of(share.Entry.Build),
                share.Part is { } part ? titles.Of(new PartRef(share.Entry.Build, part)) : "The build as a whole",
                Casing.Lower(titles.Of(share.Operation)),
                share.Minutes.ToString(),
                Casing.Lower(TitleBook.OfWord(share.Kind)),
            }),
            ["Total", "", "", "", shares.Sum(share => share.Minutes).ToString(), ""]);
    }
}
