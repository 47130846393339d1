using Journal.Core.Model;

namespace Journal.Core.Writing.Bench;

/// <summary>
/// What was chalked up at the bench and is in no entry yet: the stint that is running, remarks, and what an entry was
/// just given of it. Instants are kept in UTC, so that a change of summer time in between does not change the minutes.
/// </summary>
public sealed record Slate
{
    /// <summary>The stint that is running or paused; null without one.</summary>
    public Stint? Stint { get; init; }

    /// <summary>Remarks in the order they were made.</summary>
    public IReadOnlyList<Jot> Jots { get; init => field = value ?? []; } = []; // What reads JSON gives null for a key left out.

    /// <summary>The entry that the last stint went into, until its maker writes it up; null without one.</summary>
    public StintEntry? Unwritten { get; init; }

    /// <summary>A write that was begun: told here first, so that after a crash nothing is written twice.</summary>
    public Handover? Handover { get; init; }
}

/// <summary>A stretch of time at the bench that has not ended.</summary>
public sealed record Stint
{
    /// <summary>When it began.</summary>
    public required DateTimeOffset Began { get; init; }

    /// <summary>The build it is for.</summary>
    public required string Build { get; init; }

    /// <summary>The part it is for; null where that was not said, <c>whole</c> for the build as a whole.</summary>
    public string? Part { get; init; }

    /// <summary>What is being done; null where that was not said.</summary>
    public string? Operation { get; init; }

    /// <summary>The pauses in their order; the last has no end while it lasts.</summary>
    public IReadOnlyList<Pause> Pauses { get; init => field = value ?? []; } = [];

    /// <summary>Whether it is paused now.</summary>
    public bool IsPaused => Pauses is [.., { To: null }];

    /// <summary>The time at the bench up to an instant, pauses left out, to the nearest minute; halves up.</summary>
    public Minutes TimeUntil(DateTimeOffset end)
    {
        var ticks = (end - Began).Ticks - Pauses.Sum(pause => Math.Max(0, (Earlier(pause.To ?? end, end) - Earlier(pause.From, end)).Ticks));
        return new Minutes((int)Math.Max(0, Math.Floor(new TimeSpan(ticks).TotalMinutes + 0.5)));
    }

    private static DateTimeOffset Earlier(DateTimeOffset one, DateTimeOffset other) => one < other ? one : other;
}

/// <summary>A pause in a stint; no end while it lasts.</summary>
public sealed record Pause(DateTimeOffset From, DateTimeOffset? To);

/// <summary>A remark from the bench.</summary>
/// <param name="At">When it was made.</param>
/// <param name="Evening">The evening that it belongs to.</param>
/// <param name="Text">The remark.</param>
public sealed record Jot(DateTimeOffset At, DateOnly Evening, string Text);

/// <summary>An entry that holds a stint's hours and no words yet.</summary>
/// <param name="File">The file from the journal's folder.</param>
/// <param name="Evening">The evening that it tells of.</param>
public sealed record StintEntry(string File, DateOnly Evening);

/// <summary>A file about to be written, and what the slate is to look like when it is.</summary>
/// <param name="File">The file from the journal's folder.</param>
/// <param name="Sha256">What the file's content will be, as its digest.</param>
/// <param name="TakesStint">Whether the stint is in it.</param>
/// <param name="TakesJotsOf">The evening whose remarks are in it; null for none.</param>
/// <param name="Unwritten">What <see cref="Slate.Unwritten"/> is afterwards.</param>
public sealed record Handover(string File, string Sha256, bool TakesStint, DateOnly? TakesJotsOf, StintEntry? Unwritten);
