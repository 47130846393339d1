using Journal.Core.Model;

namespace Journal.Core.Writing.Bench;

/// <summary>
/// What was chalked up at the bench and is in no entry yet: the stint that is running, remarks, and what an entry was
/// just given of it. Instants are kept in UTC, so that a change of summer time in between does not change the minutes.
/// </summary>
public sealed record Slate
{
    /// <summary>Far more than a few phones do between a lost answer and the next try.</summary>
    private const int MostDone = 2048;

    /// <summary>The stint that is running or paused; null without one.</summary>
    public Stint? Stint { get; init; }

    /// <summary>Remarks in the order they were made.</summary>
    public IReadOnlyList<Jot> Jots { get; init => field = value ?? []; } = []; // What reads JSON gives null for a key left out.

    /// <summary>The entry that the last stint went into, until its maker writes it up; null without one.</summary>
    public StintEntry? Unwritten { get; init; }

    /// <summary>A write that was begun: told here first, so that after a crash nothing is written twice.</summary>
    public Handover? Handover { get; init; }

    /// <summary>Ids of what was done from the bench page, the latest last: what is sent once more is not done once more.</summary>
    public IReadOnlyList<string> Done { get; init => field = value ?? []; } = [];

    /// <summary>The remarks of an evening that are for a build, or for any.</summary>
    public IEnumerable<Jot> JotsOf(DateOnly evening, string build) => Jots.Where(jot => jot.Evening == evening && jot.IsFor(build));

    /// <summary>Whether something was done already.</summary>
    public bool HasDone(string action) => Done.Contains(action, StringComparer.Ordinal);

    /// <summary>The slate on which something is marked as done.</summary>
    public Slate WithDone(string action) => this with { Done = [.. Done.TakeLast(MostDone - 1), action] };

    /// <summary>The slate with one more remark, in the order of time: a phone may have been out of reach when it was made.</summary>
    public Slate With(Jot jot)
    {
        var after = Jots.Count;
        while (after > 0 && Jots[after - 1].At > jot.At)
        {
            after--;
        }

        return this with { Jots = [.. Jots.Take(after), jot, .. Jots.Skip(after)] };
    }
}

/// <summary>A stretch of time at the bench that has not ended.</summary>
public sealed record Stint
{
    /// <summary>The longest that one can be, in minutes: a day.</summary>
    public const int LongestMinutes = 24 * 60;

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

    /// <summary>The stint, paused from an instant on.</summary>
    public Stint PausedAt(DateTimeOffset instant) => this with { Pauses = [.. Pauses, new Pause(instant, null)] };

    /// <summary>The stint, going on from an instant after its pause.</summary>
    public Stint ContinuedAt(DateTimeOffset instant) => this with { Pauses = [.. Pauses.SkipLast(1), Pauses[^1] with { To = instant }] };

    /// <summary>Whether it began on another evening than this one, so that nobody ended it.</summary>
    public bool IsForgotten(BenchClock clock, DateTimeOffset now) => clock.Evening(Began) != clock.Evening(now);

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
/// <param name="Text">The remark; of one of another kind, what it says in words.</param>
public sealed record Jot(DateTimeOffset At, DateOnly Evening, string Text)
{
    /// <summary>The id by which it can be changed or taken back; null for one from the terminal.</summary>
    public string? Id { get; init; }

    /// <summary>The build that it was made for; null for whichever is written up.</summary>
    public string? Build { get; init; }

    /// <summary>
    /// What it becomes in the entry, one of <see cref="JotKind"/>; null for a line of its text. One that is not known here,
    /// of a later program, becomes a line of the text too.
    /// </summary>
    public string? Kind { get; init; }

    /// <summary>What an entry says under the keys of its kind; none for a remark.</summary>
    public IReadOnlyDictionary<string, string> Keys { get; init => field = value ?? NoKeys; } = NoKeys;

    /// <summary>Whether it belongs into an entry of a build.</summary>
    public bool IsFor(string build) => Build is null || Build == build;

    private static readonly IReadOnlyDictionary<string, string> NoKeys = new Dictionary<string, string>();

    /// <summary>What stands under one of its keys; null for nothing.</summary>
    public string? this[string key] => Keys.TryGetValue(key, out var value) && value.Length > 0 ? value : null;
}

/// <summary>What a remark from the bench becomes in the evening's entry.</summary>
public static class JotKind
{
    /// <summary>Something went wrong: <c>what</c>, <c>cause</c>, <c>lost</c>, <c>part</c>, <c>operation</c>.</summary>
    public const string Mistake = "mistake";

    /// <summary>A measured size: <c>part</c>, <c>feature</c>, <c>required</c>, <c>actual</c>, <c>with</c>.</summary>
    public const string Reading = "reading";

    /// <summary>A speed that was used: the keys of a setting, <c>part</c>, <c>operation</c>.</summary>
    public const string Setting = "setting";

    /// <summary>Something bought: <c>what</c>, <c>cost</c>, <c>kind</c>, <c>for</c>.</summary>
    public const string Bought = "bought";

    /// <summary>A part finished: <c>part</c>, <c>pieces</c>.</summary>
    public const string Finished = "finished";

    /// <summary>A lesson that was applied: <c>id</c>.</summary>
    public const string Heeded = "heeded";

    /// <summary>A snag put right: <c>id</c>.</summary>
    public const string Cleared = "cleared";

    /// <summary>A picture: <c>file</c> from the build's folder, <c>caption</c>.</summary>
    public const string Photo = "photo";
}

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
public sealed record Handover(string File, string Sha256, bool TakesStint, DateOnly? TakesJotsOf, StintEntry? Unwritten)
{
    /// <summary>The build whose remarks are taken, with those that are for none; null for those of all builds.</summary>
    public string? JotsFor { get; init; }

    /// <summary>The id of what was asked for from the bench page and is done with this; null where nothing was.</summary>
    public string? Action { get; init; }

    /// <summary>Whether a remark is in the file.</summary>
    public bool Takes(Jot jot) => jot.Evening == TakesJotsOf && (JotsFor is null || jot.IsFor(JotsFor));
}
