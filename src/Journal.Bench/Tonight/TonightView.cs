using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Site.Pages;

namespace Journal.Bench.Tonight;

/// <summary>The page of tonight, made from how things stand.</summary>
internal static class TonightView
{
    private const int MostFeatures = 12;

    /// <summary>More are read by nobody who has the machine running.</summary>
    private const int MostLessons = 2;

    /// <summary>The page.</summary>
    public static TonightPage Of(BenchNow now, Frame frame, ToldView? told, string? trouble)
    {
        var sizes = TonightsSizes.OnSlate(now);
        return new TonightPage
        {
            Frame = frame,
            Evening = Show.LongDate(now.Evening),
            Told = told,
            Trouble = trouble,
            Where = Where(now),
            Switch = now.Build is { } build ? SwitchOf(now, build) : null,
            Before = Before(now),
            Features = Features(now),
            Parts = now.Build is null ? [] : [.. now.Build.Parts.Select(part => new ChoiceView(part.Id.Value, part.Title, part.Id == PartAtHand(now)))],
            Causes = Causes(now),
            ToFinish = [.. (now.State?.ToGo ?? []).OrderByDescending(part => part.Part == PartAtHand(now)).Select(part => new ToFinishView(part.Part.Value, now.Titles.Of(new PartRef(now.Build!.Id, part.Part)), part.Pieces))],
            Currency = now.Journal.Currency,
            SoFar = [.. now.Jots.Select(jot => JotOf(jot, now, sizes))],
            Written = Written(now),
            Waiting = now.Slate.Jots.Count(jot => jot.Evening != now.Evening) is > 0 and var waiting ? $"{Casing.Capital(Count.Of(waiting, "remark"))} of other evenings {(waiting == 1 ? "waits" : "wait")} for an entry." : null,
        };
    }

    private static WhereView? Where(BenchNow now) => now is not { Build: { } build, State: { } state } ? null : new WhereView(
        build.Title,
        state.Next?.Text,
        state.Next is { } next ? Show.PlainDate(next.Date) : null,
        state.Left?.Held,
        state.Left?.Datum,
        [.. state.Snags.Select(open => new TickView(open.Snag.Id.Value, open.Snag.Text, Show.PlainDate(open.Date), JotThat(now, JotKind.Cleared, open.Snag.Id.Value)))],
        Casing.Capital(Count.Of(state.Snags.Count, "snag")) + " to put right");

    private static SwitchView SwitchOf(BenchNow now, Build build)
    {
        var (stint, parts, operations) = (now.Slate.Stint, JobChoices.Parts(now, build), JobChoices.Operations(now, build));
        var isForgotten = stint?.IsForgotten(now.Clock, now.Now) ?? false;
        return new SwitchView
        {
            State = stint is null ? "off" : isForgotten ? "forgotten" : stint.IsPaused ? "paused" : "on",
            Job = stint is null ? null : JobTitle.Of(now.Titles, stint),
            Began = stint is null ? null : $"{(isForgotten ? $"{Show.PlainDate(DateOnly.FromDateTime(now.Clock.Local(stint.Began)))} at " : "")}{now.Clock.Time(stint.Began)}",
            Time = stint is null ? null : Show.Hours(stint.TimeUntil(now.Now)),
            Seconds = stint is null ? 0 : stint.TimeUntil(now.Now).Count * 60L,
            LastSign = stint is null ? null : LastSign(stint, now),
            Build = build.Id.Value,
            Last = JobChoices.Last(now, build),
            Parts = parts.AtHand,
            OtherParts = parts.Others,
            Operations = operations.AtHand,
            OtherOperations = operations.Others,
        };
    }

    // The last that was heard of the maker during a stint: a pause, or a remark.
    private static string? LastSign(Stint stint, BenchNow now)
    {
        var evening = now.Clock.Evening(stint.Began);
        var signs = now.Slate.Jots.Where(jot => jot.At > stint.Began && jot.Evening == evening).Select(jot => jot.At).Concat(stint.Pauses.Select(pause => pause.To ?? pause.From));
        return signs.Cast<DateTimeOffset?>().Max() is { } last ? now.Clock.Time(last) : null;
    }

    private static BeforeView Before(BenchNow now)
    {
        if (now.Build is not { } build || JobAtHand(now, build) is not var (part, operations, title))
        {
            return new BeforeView("", [], [], "", []);
        }

        var material = build.Parts.FirstOrDefault(one => one.Id == part)?.Material?.Family;
        IReadOnlyList<Id<MaterialFamily>> materials = material is { } family ? [family] : [];
        var toRead = LessonsToRead.Of(Lessons.Of(now.Journal).All).For(new JobToCome(operations, materials, part is { } id ? [id] : [], [])).Select(read => LessonOf(read, now)).ToList();
        var cautions = Cautions.FewOf(Cautions.For([new CautionedWork(operations, materials)]));
        return new BeforeView(
            title,
            [.. toRead.Take(MostLessons)],
            [.. toRead.Skip(MostLessons)],
            Casing.Capital(Count.Of(Math.Max(0, toRead.Count - MostLessons), "more lesson")),
            [.. cautions.Select(caution => new CautionNote(caution.Title, caution.Happens, caution.Done))]);
    }

    private static TickView LessonOf(LessonToRead read, BenchNow now) => new(
        read.Lesson.Id.Value,
        read.Lesson.Lesson.Text + (read.Lesson.Lesson.Better is { } better ? $" Better: {Casing.Lower(better)}" : ""),
        Casing.Capital(string.Join(", ", Reasons.Of(read, now.Titles, now.Journal.Currency))),
        JotThat(now, JotKind.Heeded, read.Lesson.Id.Value));

    // That of the stint; before it has begun, last time's.
    private static (Id<Part>? Part, IReadOnlyList<Id<Operation>> Operations, string Title)? JobAtHand(BenchNow now, Build build)
    {
        var (part, operation, title) = now.Slate.Stint is { } stint ? (stint.Part, stint.Operation, JobTitle.Of(now.Titles, stint))
            : JobChoices.Last(now, build) is { } last ? (last.Part, last.Operation, last.Title)
            : (null, null, "");
        return title.Length == 0 ? null : (part is null or "whole" ? null : new Id<Part>(part), string.IsNullOrEmpty(operation) ? [] : [new Id<Operation>(operation)], title);
    }

    private static Id<Part>? PartAtHand(BenchNow now) => now.Build is { } build ? JobAtHand(now, build)?.Part : null;

    private static IReadOnlyList<FeatureView> Features(BenchNow now)
    {
        if (now.Build is not { } build)
        {
            return [];
        }

        var atHand = PartAtHand(now);
        var known = Readings.Of(now.Journal).All.Where(reading => reading.Build == build.Id && reading.Part is not null)
            .Select(reading => (Part: reading.Part!.Value, reading.Feature, reading.Date, Required: reading.RequiredText ?? ""));
        var tonight = now.Slate.Jots.Where(jot => jot.Kind == JotKind.Reading && jot.IsFor(build.Id.Value) && jot["part"] is not null && jot["feature"] is not null)
            .Select(jot => (Part: new Id<Part>(jot["part"]!), Feature: jot["feature"]!, Date: jot.Evening, Required: jot["required"] ?? ""));
        return
        [
            .. known.Concat(tonight)
                .GroupBy(one => (one.Part, one.Feature.ToUpperInvariant()))
                .Select(group => (group.Last().Part, group.Last().Feature, group.Last().Date, Required: group.Select(one => one.Required).LastOrDefault(required => required.Length > 0) ?? ""))
                .OrderByDescending(one => one.Part == atHand)
                .ThenByDescending(one => one.Date)
                .Take(MostFeatures)
                .Select(one => new FeatureView($"{one.Part}.{one.Feature}", one.Part == atHand ? Casing.Capital(one.Feature) : $"{now.Titles.Of(new PartRef(build.Id, one.Part))}: {one.Feature}", one.Required)),
        ];
    }

    private static IReadOnlyList<ChoiceView> Causes(BenchNow now)
    {
        var told = now.Journal.Entries.SelectMany(entry => entry.Mistakes).Select(mistake => mistake.Cause).OfType<Id<Cause>>().CountBy(cause => cause).OrderByDescending(count => count.Value).Select(count => count.Key);
        return [.. told.Concat(now.Journal.Vocabulary.Causes.Ids).Distinct().Select(cause => new ChoiceView(cause.Value, now.Titles.Of(cause)))];
    }

    private static string? JotThat(BenchNow now, string kind, string id) => now.Jots.FirstOrDefault(jot => jot.Kind == kind && jot["id"] == id)?.Id;

    private static JotView JotOf(Jot jot, BenchNow now, IReadOnlyDictionary<string, ReadingToCome> sizes) => new()
    {
        Id = jot.Id,
        Time = now.Clock.Time(jot.At),
        Text = jot.Text,
        Form = jot.Kind switch { null => "remark", JotKind.Photo => "caption", JotKind.Heeded or JotKind.Cleared or JotKind.Finished => "", var kind => kind },
        Fields = FieldsOf(jot),
        Verdict = jot.Id is { } id && sizes.TryGetValue(id, out var judged) ? SizeVerdict.Of(judged) : null,
    };

    private static FieldView[] FieldsOf(Jot jot)
    {
        FieldView Field(string name, string label, bool isLong = false) => new(name, label, jot[name] ?? "", isLong);
        return jot.Kind switch
        {
            null => [new("text", "Remark", jot.Text, IsLong: true)],
            JotKind.Photo => [Field("caption", "What it shows", isLong: true)],
            JotKind.Mistake => [Field("what", "What went wrong", isLong: true), Field("lost", "Time lost"), Field("lesson", "What to do another time", isLong: true), Field("cause", "")],
            JotKind.Reading => [Field("actual", "Size"), Field("required", "Required"), Field("feature", ""), Field("part", "")],
            JotKind.Setting => [Field("rpm", "Turns a minute"), Field("feed", "Feed"), Field("depth", "Depth of cut"), Field("cutter", "Cutter")],
            JotKind.Bought => [Field("what", "What"), Field("cost", "Cost")],
            _ => [],
        };
    }

    private static string? Written(BenchNow now)
    {
        var entries = now.Journal.Entries.Where(entry => entry.Date == now.Evening).ToList();
        return entries.Count == 0 ? null
            : $"{Show.Hours(entries.Sum(entry => entry.Time))} of tonight stand in {Count.Of(entries.Count, "entry", "entries")}: {string.Join("; ", entries.SelectMany(entry => entry.Jobs.Select(job => $"{JobTitle.Of(now.Titles, entry.Build, job)}, {Show.Hours(job.Time)}")))}.";
    }
}
