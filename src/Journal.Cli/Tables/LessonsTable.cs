using System.Globalization;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>What was learned and what it cost, for people.</summary>
internal static class LessonsTable
{
    /// <summary>A lead, the lessons with the dearest first, and the causes.</summary>
    public static void Print(MakerJournal journal, Lessons lessons, Printout print)
    {
        var titles = new TitleBook(journal);
        if (lessons.All.Count == 0 && lessons.Mistakes.Count == 0)
        {
            print.Say("No lessons yet. Add `lessons` to an entry, or a `lesson` to a mistake.");
            return;
        }

        print.Say(Lead(lessons, journal.Currency));
        if (lessons.All.Count > 0)
        {
            print.Gap();
            print.Table(
                [Column.Figures("Lost"), Column.Figures("Repeated"), Column.Figures("Heeded"), Column.Words("Lesson, and where it was learned")],
                lessons.All.OrderByDescending(lesson => lesson.MinutesLost).Select(lesson => Row(lesson, titles)));
        }

        PrintCauses(lessons, titles, print);
    }

    private static string Lead(Lessons lessons, string currency)
    {
        var totals = lessons.Totals;
        var money = totals.MoneyLost > 0 ? $" and {Written.Money(totals.MoneyLost)} {currency}" : "";
        var cost = lessons.Mistakes.Count == 0 ? "no mistakes"
            : $"{Count.Of(lessons.Mistakes.Count, "mistake")} cost {totals.MinutesLost}{money}";
        var again = totals.Repeated == 0 ? "none repeated" : $"repeated {Count.Times(totals.Repeated)}";
        var heeded = totals.Heeded == 0 ? "none heeded so far" : $"heeded {Count.Times(totals.Heeded)}";
        var rate = totals.MistakesPerHundredHours is { } often && lessons.Mistakes.Count > 0
            ? string.Create(CultureInfo.InvariantCulture, $" {often:0.0} mistakes in a hundred hours.") : "";
        return $"{Casing.Capital(Count.Of(lessons.All.Count, "lesson"))}: {cost}; {again}, {heeded}.{rate}";
    }

    private static string[] Row(LessonFigure lesson, TitleBook titles)
    {
        var where = titles.InSentence(lesson.On.Operations) + string.Concat(lesson.On.Parts.Take(1).Select(part => $", {Casing.Lower(titles.Of(part))}"));
        return
        [
            Written.Time(lesson.MinutesLost),
            Count.Cell(lesson.Repeated.Count),
            Count.Cell(lesson.Heeded.Count),
            $"{lesson.Lesson.Text} ({where})",
        ];
    }

    private static void PrintCauses(Lessons lessons, TitleBook titles, Printout print)
    {
        if (lessons.CausesByMinutes.Count == 0)
        {
            return;
        }

        print.Heading("Why things went wrong");
        print.Table(
            [Column.Words("Cause"), Column.Figures("Mistakes"), Column.Figures("Lost"), Column.Figures("Share"), Column.Figures("Cumulative")],
            lessons.CausesByMinutes.Select(cause => new[]
            {
                titles.Of(cause.Cause),
                Count.Cell(cause.Mistakes),
                Written.Time(cause.MinutesLost),
                Share.Percent(cause.Percent),
                Share.Percent(cause.PercentTogether),
            }),
            ["Total", lessons.Mistakes.Count.ToString(CultureInfo.InvariantCulture), lessons.Totals.MinutesLost.ToString(), "", ""]);
    }
}
