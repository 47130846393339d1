using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing;

/// <summary>When a stint ended, where that was said beforehand.</summary>
/// <param name="At">The time on the clock.</param>
/// <param name="Now">Whether it went on until now.</param>
/// <param name="Drop">Whether it does not count.</param>
internal sealed record SaidEnd(TimeOnly? At = null, bool Now = false, bool Drop = false)
{
    /// <summary>Whether nothing was said.</summary>
    public bool IsOpen => At is null && !Now && !Drop;

    /// <summary>Whether more than one thing was said.</summary>
    public bool IsContradictory => new[] { At is not null, Now, Drop }.Count(one => one) > 1;
}

/// <summary>Ends a stint and puts its job into the evening's entry.</summary>
internal sealed class StintEnding(OpenJournal open, SlateFile slate, Terminal terminal)
{
    private readonly TitleBook titles = new(open.Journal);

    /// <summary>Ends the stint.</summary>
    /// <param name="said">When it ended, where that was said.</param>
    /// <param name="part">Another part than it began with; null for that one.</param>
    /// <param name="operations">Other operations; none for that one.</param>
    /// <param name="told">The job as it was told, for what a stint does not know: how the work was held, and the like; null for nothing.</param>
    /// <returns>The entry's file; null where the stint left none.</returns>
    public string? End(SaidEnd said, string? part, IReadOnlyList<string> operations, NewJob? told = null)
    {
        var stint = slate.Slate.Stint!;
        if (said.IsContradictory)
        {
            throw new UsageException("Use only one of `--at`, `--now` and `--drop`.");
        }

        // It can be forgotten even where its build or its part is not there any more.
        if (said.Drop)
        {
            return Forget();
        }

        var build = BuildOf(stint);
        var job = (told ?? new NewJob([], [], "")) with { Parts = PartOf(build, part, stint) is { } one ? [one] : [], Operations = open.Operations(operations.Count > 0 ? operations : OperationsOf(stint)) };
        if (When(stint, said) is not { } end)
        {
            return Forget();
        }

        if (stint.TimeUntil(end) is { Count: > Stint.LongestMinutes } tooLong)
        {
            throw new UsageException($"That would be {tooLong}, more than a day. Give the time you stopped with `--at 22:40`, or discard the stint with `--drop`.");
        }

        var ended = new EveningEntry(open.Folder, build, slate).EndStint(job, end, open.Clock);
        terminal.Complain(ended.File is null
            ? "Less than a minute at the bench: nothing was written."
            : $"{ended.Time} at the bench: {JobTitle.Of(titles, build.Id, job.Part, job.Operations)}.");
        return ended.File;
    }

    private static IReadOnlyList<string> OperationsOf(Stint stint) => stint.Operation is { } operation ? [operation] : [];

    private string? Forget()
    {
        slate.Keep(slate.Slate with { Stint = null });
        terminal.Complain("The stint was discarded; nothing was written.");
        return null;
    }

    private Build BuildOf(Stint stint) => open.Journal.Builds.FirstOrDefault(build => build.Id.Value == stint.Build)
        ?? throw new UsageException($"The stint began on the build `{stint.Build}`, which is gone or cannot be read (see `journal check`). Correct that, or discard the stint: `journal stint end --drop`.");

    private static string? PartOf(Build build, string? said, Stint stint) =>
        said is null && stint.Part is { } begun and not "whole" && !build.HasPart(new(begun))
            ? throw new UsageException($"The stint began on the part `{begun}`, which {build.Title} no longer has. Give the part with `--part`, or discard the stint: `journal stint end --drop`.")
            : OpenJournal.Part(build, said ?? stint.Part);

    private DateTimeOffset? When(Stint stint, SaidEnd said)
    {
        if (terminal.Now < stint.Began)
        {
            throw new UsageException(AheadOfTheClock(stint));
        }

        if (said.IsOpen && !stint.IsForgotten(open.Clock, terminal.Now))
        {
            return terminal.Now;
        }

        if (said.IsOpen)
        {
            said = Ask(stint);
        }

        return said switch
        {
            { Drop: true } => null,
            { At: { } at } => At(stint, at),
            _ => terminal.Now,
        };
    }

    private DateTimeOffset At(Stint stint, TimeOnly at) =>
        open.Clock.Next(at, stint.Began) is var end && end <= terminal.Now ? end
            : throw new UsageException($"{at.ToString("HH:mm", CultureInfo.InvariantCulture)} after the stint began is in the future: it began {Since(stint)}, and now it is {open.Clock.Time(terminal.Now)}.");

    private SaidEnd Ask(Stint stint)
    {
        var what = $"The stint on {JobTitle.Of(titles, stint)} began {Since(stint)} and was not ended.";
        if (!terminal.CanAsk)
        {
            throw new UsageException($"{what} Use `journal stint end --at 22:40` if you stopped at that time, `--now` if you worked through, or `--drop` to discard it.");
        }

        terminal.Complain(what);
        terminal.Complain("When did you stop? A time such as 22:40; `now` if you worked through; `drop` to discard the stint.");
        return new Questions(terminal).Ask("Stopped at", LastSign(stint), line => line switch
        {
            "now" => (new SaidEnd(Now: true), null),
            "drop" => (new SaidEnd(Drop: true), null),
            _ when ClockTime.TryRead(line, out var at) && open.Clock.Next(at, stint.Began) <= terminal.Now => (new SaidEnd(at), null),
            _ => (new SaidEnd(), "Give a time such as 22:40, `now` or `drop`."),
        });
    }

    // The last that was heard of the maker during the stint: a pause that was begun, or a remark.
    private string? LastSign(Stint stint)
    {
        var signs = slate.Slate.Jots.Where(jot => jot.At > stint.Began && jot.Evening == open.Clock.Evening(stint.Began)).Select(jot => jot.At)
            .Concat(stint.Pauses.Select(pause => pause.To ?? pause.From));
        return signs.Cast<DateTimeOffset?>().Max() is { } last ? open.Clock.Time(last) : null;
    }

    private string AheadOfTheClock(Stint stint) =>
        $"By the clock the stint has not begun yet: it began {Since(stint)}. Set the clock right, or use `--drop`.";

    private string Since(Stint stint) => $"{Wording.Written.Date(DateOnly.FromDateTime(open.Clock.Local(stint.Began)))} at {open.Clock.Time(stint.Began)}";
}
