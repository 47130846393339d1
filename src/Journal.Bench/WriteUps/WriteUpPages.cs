using System.Globalization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Texts;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Texts;
using Journal.Core.Writing.Told;
using Journal.Site.Pages;
using Journal.Site.Preview;

namespace Journal.Bench.WriteUps;

/// <summary>The page of a write-up, made from the evening and its form.</summary>
internal static class WriteUpPages
{
    /// <summary>The write-up.</summary>
    /// <param name="workshop">What all pages work with.</param>
    /// <param name="now">How things stand.</param>
    /// <param name="evening">The evening.</param>
    /// <param name="isAnother">Whether it is another job, for an entry of its own.</param>
    /// <param name="fields">The form.</param>
    /// <param name="draft">The entry made of it; null where that could not be done.</param>
    /// <param name="typed">What was typed; null for the draft's text.</param>
    public static WriteUpView Of(Workshop workshop, BenchNow now, EveningToWrite evening, bool isAnother, WriteUpFields fields, Drafted? draft, string? typed)
    {
        var (titles, text, file) = (now.Titles, typed ?? draft?.Entry.Text ?? "", draft?.Entry.File ?? "");
        var offered = evening.Into is null ? Offered.Jobs(evening.Heard, evening.Journal, evening.Build, null) : [];
        return new WriteUpView
        {
            Evening = Show.LongDate(evening.Evening),
            Date = evening.Evening.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Build = evening.Build.Title,
            IsAnother = isAnother,
            File = file,
            Standing = evening.Into is { } into ? Standing(evening, titles, into) : null,
            Title = fields.Title,
            Jobs = [.. fields.Jobs.Zip(offered).Select((pair, i) => Job(i, pair.First, evening.Heard.Because(pair.Second.Words)))],
            Tools = fields.Tools,
            Next = fields.Next,
            Understood = [.. WriteUpFields.Items(evening).Select(item => new UnderstoodView(WriteUpFields.NameOf(item), item.Key, item.Value, evening.Heard.Because(item.Words), fields.Kept.Contains(WriteUpFields.NameOf(item))))],
            Remarks = [.. evening.Jots.Select(jot => new NotedView(now.Clock.Time(jot.At), jot.Text))],
            LeftOut = draft is null ? [] : [.. draft.Told.LeftOut.Select(one => $"{one.What}: {one.Why}."), .. draft.Entry.LeftOut.Select(one => $"The entry has `{one.Key}` already, which stays. Not written: {one.Value}")],
            Text = text,
            Seen = draft?.Entry.Seen ?? "",
            Noted = evening.Noted,
            Parts = [.. evening.Build.Parts.Select(part => new ChoiceView(part.Id.Value, part.Title)), new ChoiceView("whole", "The build as a whole")],
            Operations = [.. evening.Journal.Vocabulary.Operations.Ids.Select(id => new ChoiceView(id.Value, titles.Of(id)))],
            Problems = draft is null ? [] : Look(workshop, evening, file, text).Problems,
            Preview = $"{Addresses.Site}/{DraftPreview.PageOf(new JournalFile(file, JournalFileKind.Entry, evening.Build.Id.Value))}",
            Editor = workshop.Look.AddressOf("editor.js"),
            Script = workshop.Look.AddressOf("texts.js"),
        };
    }

    /// <summary>What an entry looks like while it is typed.</summary>
    public static TypedLook Look(Workshop workshop, EveningToWrite evening, string file, string text) =>
        TextView.Look(workshop, new JournalFile(file, JournalFileKind.Entry, evening.Build.Id.Value), text);

    /// <summary>Other evenings that wait for an entry, and another entry of this one.</summary>
    public static IReadOnlyList<Way> Others(BenchNow now, EveningToWrite? evening) =>
    [
        .. evening?.Into is null ? [] : new[] { new Way($"{Addresses.WriteUp}?evening={Iso(evening.Evening)}&another=yes", "Another job of this evening, in an entry of its own", IsHere: false) },
        .. now.Slate.Jots.Select(jot => jot.Evening).Append(now.Evening).Distinct().Where(other => other != evening?.Evening).Order()
            .Select(other => new Way($"{Addresses.WriteUp}?evening={Iso(other)}", Show.PlainDate(other), IsHere: false)),
    ];

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static JobForm Job(int number, JobFields fields, string? because) =>
        new(number, because, fields.IsIn, fields.Part, fields.Operation, fields.Hours, fields.SetUp, fields.Held, fields.Datum, fields.Mends);

    private static string Standing(EveningToWrite evening, TitleBook titles, string into) =>
        evening.Build.Entries.FirstOrDefault(entry => entry.File == into) is { } entry
            ? string.Join("; ", entry.Jobs.Select(job => $"{JobTitle.Of(titles, evening.Build.Id, job)}, {job.Time}"))
            : Path.GetFileName(into);
}
