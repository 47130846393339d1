using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Bench.Slates;

/// <summary>The switch is put on for a job; one that runs for another job ends with that.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was done.</param>
/// <param name="Build">The build.</param>
/// <param name="Part">The part; null or <c>whole</c> for the build as a whole.</param>
/// <param name="Operation">The operation; null where it is not said.</param>
internal sealed record Begun(string Id, DateTimeOffset At, string Build, string? Part, string? Operation) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        var job = JobTitle.Of(new TitleBook(hands.Journal), new(Build), Part, Operation is null ? [] : [Operation]);
        if (hands.Slate.Stint is { } running)
        {
            if (running.IsForgotten(hands.Clock, At) || At < LastSign(running))
            {
                return KeptAsRemark(hands, job);
            }

            if ((running.Build, running.Part, running.Operation) == (Build, Part, Operation))
            {
                return running.IsPaused ? Switched.GoOn(hands, running, At) : $"Running already: {job}.";
            }

            StintEnd.Of(running, hands).Put(At, action: null);
        }

        hands.Put(hands.Slate with { Stint = new Stint { Began = At.ToUniversalTime(), Build = Build, Part = Part, Operation = Operation } });
        return $"Begun at {hands.Clock.Time(At)}: {job}.";
    }

    // It was done before what another phone did, or while the last one was not ended: what happened when is for the maker to say.
    private string KeptAsRemark(Hands hands, string job)
    {
        hands.Put(hands.Slate.With(new Jot(At, hands.Clock.Evening(At), $"Begun at {hands.Clock.Time(At)}: {job}.") { Id = Id, Build = Build }));
        return $"Another stint stands in between, so this is kept as a remark: begun at {hands.Clock.Time(At)}, {job}.";
    }

    private static DateTimeOffset LastSign(Stint stint) => stint.Pauses is [.., var last] ? last.To ?? last.From : stint.Began;
}

/// <summary>What is done with the switch while a stint runs.</summary>
internal enum Switching
{
    /// <summary>It is paused.</summary>
    Pause,

    /// <summary>It goes on after a pause.</summary>
    GoOn,

    /// <summary>It ends; its job goes into the evening's entry.</summary>
    End,

    /// <summary>It does not count.</summary>
    Drop,
}

/// <summary>The switch is used while a stint runs.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was done.</param>
/// <param name="What">What is done.</param>
internal sealed record Switched(string Id, DateTimeOffset At, Switching What) : Deed(Id, At)
{
    /// <summary>For one whose end was forgotten: the time on the clock when it ended; null for now.</summary>
    public TimeOnly? Ended { get; init; }

    /// <summary>For one whose end was forgotten: whether it went on all the time.</summary>
    public bool WentOn { get; init; }

    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        if (hands.Slate.Stint is not { } running)
        {
            return "No stint is running.";
        }

        if (What == Switching.Drop)
        {
            hands.Put(hands.Slate with { Stint = null });
            return "The stint does not count.";
        }

        if (At < running.Began)
        {
            return $"The stint began at {hands.Clock.Time(running.Began)}, after this; it goes on.";
        }

        return What switch
        {
            Switching.Pause when running.IsPaused => "Paused already.",
            Switching.Pause => Pause(hands, running),
            Switching.GoOn when !running.IsPaused => "Running already.",
            Switching.GoOn => GoOn(hands, running, At),
            _ => End(hands, running),
        };
    }

    /// <summary>Has a paused stint go on.</summary>
    public static string GoOn(Hands hands, Stint running, DateTimeOffset at)
    {
        hands.Put(hands.Slate with { Stint = running.ContinuedAt(at.ToUniversalTime()) });
        return $"Going on at {hands.Clock.Time(at)}, {running.TimeUntil(at)} at the bench so far.";
    }

    private string Pause(Hands hands, Stint running)
    {
        hands.Put(hands.Slate with { Stint = running.PausedAt(At.ToUniversalTime()) });
        return $"Paused at {hands.Clock.Time(At)}, {running.TimeUntil(At)} at the bench so far.";
    }

    private string End(Hands hands, Stint running)
    {
        if (Ended is null && !WentOn && running.IsForgotten(hands.Clock, At))
        {
            throw new RefusedException("This stint began on another evening. Say when you stopped.");
        }

        var end = Ended is { } time ? hands.Clock.Next(time, running.Began) : At;
        if (end > hands.Now)
        {
            throw new RefusedException($"That time is still to come: the stint began at {hands.Clock.Time(running.Began)}.");
        }

        return StintEnd.Of(running, hands).Put(end, Id);
    }
}

/// <summary>The end of a stint, whose build and part are known still.</summary>
/// <param name="Hands">The slate.</param>
/// <param name="Build">The build.</param>
/// <param name="Stint">The stint.</param>
internal sealed record StintEnd(Hands Hands, Build Build, Stint Stint)
{
    /// <summary>The end of a stint.</summary>
    /// <exception cref="RefusedException">Its build or part is gone.</exception>
    public static StintEnd Of(Stint stint, Hands hands)
    {
        var build = hands.Journal.Builds.FirstOrDefault(build => build.Id.Value == stint.Build)
            ?? throw new RefusedException($"The stint began on the build `{stint.Build}`, which is gone or cannot be read (see `journal check`). Correct that, or discard the stint.");
        return stint.Part is null or "whole" || build.HasPart(new(stint.Part)) ? new StintEnd(hands, build, stint)
            : throw new RefusedException($"The stint began on the part `{stint.Part}`, which {build.Title} no longer has. Correct that, or discard the stint.");
    }

    /// <summary>Puts its job into the evening's entry.</summary>
    /// <param name="end">When it ended.</param>
    /// <param name="action">The deed that is done with this; null where more is to come.</param>
    /// <exception cref="RefusedException">It would be longer than a day.</exception>
    public string Put(DateTimeOffset end, string? action)
    {
        if (Stint.TimeUntil(end) is { Count: > Stint.LongestMinutes } tooLong)
        {
            throw new RefusedException($"That would be {tooLong}, more than a day. Say when you stopped.");
        }

        IReadOnlyList<string> operations = Stint.Operation is { } operation ? [operation] : [];
        var ended = Hands.EndStint(Build, new NewJob(Stint.Part, operations, ""), end, action);
        return ended.File is null
            ? "Less than a minute at the bench: nothing was written."
            : $"{ended.Time} at the bench: {JobTitle.Of(new TitleBook(Hands.Journal), Build.Id, Stint.Part, operations)}.";
    }
}
