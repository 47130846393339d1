using CsCheck;
using Journal.Core.Model;

namespace Journal.Core.Tests;

/// <summary>
/// Whole journals for property tests: any number of builds, evenings across two turns of the year, jobs on several parts
/// at odd weights, mistakes with and without ids, links to things that do not exist.
/// </summary>
internal static class Generated
{
    private static readonly DateOnly FirstDay = new(2024, 11, 25);
    private static readonly string[] Parts = ["head", "quill", "table", "gib-screw", "not-listed"];
    private static readonly string[] Tools = ["lathe", "boring-head", "quill-block", "drill-jig", "square", "mentioned-only"];
    private static readonly string[] Mistakes = ["bore-off", "wrong-hand", "no-such-mistake"];
    private static readonly string[] Lessons = ["indicate-both-ends", "clamp-lightly", "count-twice", "no-such-lesson"];
    private static readonly string[] Causes = [.. Sample.Vocabulary.Causes.Ids.Select(id => id.Value)];

    private static readonly Gen<Minutes> Time = Gen.Int[1, 600].Select(count => new Minutes(count));

    private static readonly Gen<decimal> Cost = Gen.Int[0, 50_000].Select(pence => pence / 100m);

    private static readonly Gen<Job> Job =
        Gen.Select(Time, Gen.Int[0, 100], SomeOf(Parts), Gen.Int[1, 9].Array[Parts.Length], SomeOperations(), SomeOf(Tools), SomeOf(Tools), Holding())
            .SelectMany(_ => Maybe(Mistakes), (made, mends) => new Job
            {
                Number = 1,
                Time = made.Item1,
                SetUp = new(made.Item1.Count * made.Item2 / 100),
                Parts = [.. made.Item3.Select((part, i) => new PartShare(new(part), made.Item4[i] / 2m))],
                Operations = made.Item5,
                Tools = [.. made.Item6.Select(id => new Id<Tool>(id))],
                Made = [.. made.Item7.Take(2).Select(id => new Id<Tool>(id))],
                Held = made.Item8.Held,
                Datum = made.Item8.Datum,
                Mends = mends is null ? null : new(mends),
            });

    private static readonly Gen<Mistake> Mistake =
        Gen.Select(Maybe(Mistakes), Maybe(Causes), Gen.Int[0, 120], Maybe(Lessons), Maybe(Lessons), Gen.Int[0, 4]).Select(made => new Mistake
        {
            What = "It went wrong.",
            Id = made.Item1 is null ? null : new(made.Item1),
            Cause = made.Item2 is null ? null : new(made.Item2),
            Lost = new(made.Item3),
            Lesson = made.Item4 is null ? null : new(made.Item4),
            Repeats = made.Item5 is null ? null : new(made.Item5),
            Job = made.Item6,
        });

    private static readonly Gen<Purchase> Purchase =
        Gen.Select(Cost, Gen.Enum<PurchaseKind>(), Maybe(Parts), Maybe(Tools), Maybe(Mistakes)).Select(made => new Purchase
        {
            What = "something",
            Cost = made.Item1,
            Kind = made.Item2,
            ForPart = made.Item3 is null ? null : new(made.Item3),
            ForTool = made.Item4 is null ? null : new(made.Item4),
            Because = made.Item5 is null ? null : new(made.Item5),
        });

    private static readonly Gen<Finished> Finished =
        Gen.Select(OneOf(Parts), Gen.Int[0, 3]).Select(made => new Finished(new(made.Item1), made.Item2 == 0 ? null : made.Item2));

    private static readonly Gen<Entry> Entry =
        Gen.Select(
            Gen.Int[0, 800], Job.Array[1, 3], Mistake.Array[0, 2], Purchase.Array[0, 2], SomeOf(Lessons), SomeOf(Lessons), Finished.Array[0, 2])
            .SelectMany(_ => Gen.Select(Gen.Int[0, 7], Gen.Int[0, 7]), (made, snags) => new Entry
            {
                Id = new("to-be-numbered"),
                Build = new("unnamed"),
                File = "entry.md",
                Title = "An evening",
                Date = FirstDay.AddDays(made.Item1),
                Jobs = [.. made.Item2.Select((job, i) => job with { Number = i + 1 })],
                Body = Body.Empty,
                Mistakes = made.Item3,
                Bought = made.Item4,
                Lessons = [.. made.Item5.Select(id => new Lesson { Id = new(id), Text = id, Entry = default })],
                Heeded = [.. made.Item6.Select(id => new Id<Lesson>(id))],
                Finished = made.Item7,
                Snags = snags.Item1 < 3 ? [new Snag(new($"snag-{snags.Item1}"), "Put it right.")] : [],
                Cleared = snags.Item2 < 3 ? [new($"snag-{snags.Item2}")] : [],
            });

    private static readonly Gen<Build> Build =
        Gen.Select(Entry.Array[0, 12], Gen.Enum<BuildStatus>(), Cost, Gen.Bool, Gen.Int[1, 6]).Select(made => new Build
        {
            Id = new("unnamed"),
            Title = "A build",
            Folder = "unnamed",
            Status = made.Item2,
            Cost = made.Item4 ? made.Item3 : null,
            Parts = [.. Parts.SkipLast(1).Select(id => Sample.Part(id, made.Item5, "grey-iron"))],
            Entries = made.Item1,
        });

    /// <summary>Whole journals of up to four builds.</summary>
    public static Gen<MakerJournal> Journals { get; } = Build.Array[0, 4].Select(builds => Sample.Journal([.. builds.Select(Named)]) with
    {
        Tools = [.. Tools.SkipLast(1).Select((id, i) => new Tool { Id = new(id), Title = id, Kind = new(id.EndsWith("jig", StringComparison.Ordinal) ? "jig" : "gauge"), Cost = i * 12.5m, Need = (Need)(i % 3) })],
    });

    /// <summary>Gives a build and its entries their names, and its entries their order.</summary>
    private static Build Named(Build build, int number)
    {
        var id = new Id<Build>($"build-{number}");
        var entries = build.Entries.Select((entry, i) => entry with { Build = id, Id = new($"{entry.Date:yyyy-MM-dd}-evening-{i}") });
        return build with
        {
            Id = id,
            Entries = [.. entries.Select(entry => entry with { Lessons = [.. entry.Lessons.Select(lesson => lesson with { Entry = entry.Ref })] }).OrderBy(entry => entry.Date).ThenBy(entry => entry.Id)],
        };
    }

    private static Gen<string[]> SomeOf(string[] words) =>
        Gen.Int[0, (1 << words.Length) - 1].Select(choice => words.Where((_, i) => (choice >> i & 1) == 1).ToArray());

    private static Gen<Id<Operation>[]> SomeOperations() =>
        OneOf([.. Sample.Vocabulary.Operations.Ids]).Array[1, 3].Select(ids => ids.Distinct().ToArray());

    private static Gen<T> OneOf<T>(T[] things) => Gen.Int[0, things.Length - 1].Select(i => things[i]);

    private static Gen<string?> Maybe(string[] words) => Gen.Int[0, words.Length].Select(i => i == words.Length ? null : words[i]);

    private static Gen<(string? Held, string? Datum)> Holding() =>
        Gen.Select(Maybe(["four-jaw", "face plate"]), Maybe(["machined base", "bore"]));
}
