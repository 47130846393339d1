using Journal.Core.Writing.Bench;

namespace Journal.Bench.Slates;

/// <summary>A remark of any kind is noted, or one that was noted is said anew.</summary>
/// <param name="Id">The id of the deed, by which the remark is known from then on.</param>
/// <param name="At">When it was made.</param>
/// <param name="Text">What it says in words.</param>
internal sealed record Jotted(string Id, DateTimeOffset At, string Text) : Deed(Id, At)
{
    /// <summary>More remarks than an evening's entry can take.</summary>
    public const int MostJots = 20_000;

    /// <summary>What it becomes in the entry; null for a line of its text.</summary>
    public string? Kind { get; init; }

    /// <summary>What the entry says under the keys of its kind.</summary>
    public IReadOnlyDictionary<string, string> Keys { get; init; } = new Dictionary<string, string>();

    /// <summary>The build that it is for; null for whichever is written up.</summary>
    public string? Build { get; init; }

    /// <summary>The remark that is said anew; null for a new one.</summary>
    public string? Changes { get; init; }

    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        var slate = hands.Slate;
        if (Changes is { } known && slate.Jots.FirstOrDefault(jot => jot.Id == known) is { } before)
        {
            hands.Put(slate with { Jots = [.. slate.Jots.Select(jot => ReferenceEquals(jot, before) ? before with { Text = Text, Kind = Kind, Keys = Keys } : jot)] });
            return $"Changed: {Text}";
        }

        if (slate.Jots.Count >= MostJots)
        {
            throw new RefusedException("The slate is full. Write the evenings up that wait, with `journal write`.");
        }

        // What was to be changed stands in an entry by now, or was taken back: what was said is kept all the same.
        hands.Put(slate.With(new Jot(At, hands.Clock.Evening(At), Text) { Id = Id, Kind = Kind, Keys = Keys, Build = Build }));
        return $"Kept, {hands.Clock.Time(At)}: {Text}";
    }
}
