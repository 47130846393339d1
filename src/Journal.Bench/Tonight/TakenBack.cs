using Journal.Bench.Slates;

namespace Journal.Bench.Tonight;

/// <summary>A remark is taken back. What is in an entry already stays there.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was done.</param>
/// <param name="Jot">The remark.</param>
internal sealed record TakenBack(string Id, DateTimeOffset At, string Jot) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        if (hands.Slate.Jots.FirstOrDefault(jot => jot.Id == Jot) is not { } jot)
        {
            return "It was gone already.";
        }

        hands.Put(hands.Slate with { Jots = [.. hands.Slate.Jots.Where(one => one.Id != Jot)] });
        hands.Afterwards(() => PictureJot.PutAside(jot, hands));
        return $"Taken back: {jot.Text}";
    }
}
