using Journal.Core.Model;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>The line of a parts list whose part is split: it stays with the first, and the others get lines of their own below it.</summary>
/// <param name="file">The build's file.</param>
/// <param name="use">Where the part is defined.</param>
/// <param name="part">The part.</param>
/// <param name="parts">What it becomes.</param>
internal sealed class SplitLine(NamedFile file, NameUse use, Part part, IReadOnlyList<SplitPart> parts)
{
    private static readonly string[] Copied = ["material", "stock", "supplied", "drawing", "quantity"];

    private readonly SourceMap? line = use.Holder as SourceMap;

    private bool KeepsItsName => parts.Any(one => one.Name == part.Id.Value);

    // The part's own name stays on its line where it is kept.
    private SplitPart First => parts.FirstOrDefault(one => one.Name == part.Id.Value) ?? parts[0];

    /// <summary>What is to be changed; null where the line is written in a way that this cannot be done.</summary>
    public IReadOnlyList<Splice>? Splices()
    {
        if (((file.Tree as SourceMap)?["parts"] as SourceList) is not { } list)
        {
            return null;
        }

        var splices = new List<Splice>();
        if (line is null)
        {
            var text = KeepsItsName ? part.Id.Value : YamlText.Map(("id", First.Name), ("formerly", part.Id.Value));
            splices.Add(new Splice(use.Holder!.Start, use.Holder.End - use.Holder.Start, text));
        }
        else if (!KeepsItsName)
        {
            splices.Add(new Splice(use.Start, use.Length, First.Name));
            if (FormerName.Put(file.Yaml, line, [part.Id.Value]) is not { } kept)
            {
                return null;
            }

            splices.AddRange(kept);
        }

        foreach (var (key, guess) in new[] { ("guess", part.Guess), ("reguess", part.Reguess) })
        {
            if (line?[key] is { } value && guess is not null)
            {
                splices.Add(new Splice(value.Start, value.End - value.Start, GuessOf(guess, First)));
            }
        }

        var others = parts.Where(one => one != First).Select(Line).ToList();
        splices.AddRange(list.IsInBrackets
            ? [Splice.At(use.Holder!.End, string.Concat(others.Select(other => $", {other}")))]
            : others.Select(other => ItemKey.BelowLine(file.Yaml, use.Holder!.End, ItemKey.Column(file.Yaml, list.Start), $"- {other}")));
        return splices;
    }

    private string Line(SplitPart one) => YamlText.Map(
    [
        ("id", one.Name),
        .. Copied.Select(key => (key, line?[key] is SourceText { Text.Length: > 0 } value ? YamlText.Of(value.Text) : null)),
        ("guess", line?["guess"] is not null && part.Guess is { } guess ? GuessOf(guess, one) : null),
        ("reguess", line?["reguess"] is not null && part.Reguess is { } reguess ? GuessOf(reguess, one) : null),
    ]);

    // Shares that add up to the guess, to the minute.
    private string GuessOf(Guess guess, SplitPart one)
    {
        Minutes Share(Minutes time) => time.Share([.. parts.Select(part => (decimal)part.Weight)])[parts.Index().First(part => part.Item == one).Index];
        return guess switch
        {
            { Low: { } low, High: { } high } => YamlText.Map(("low", $"{Share(low)}"), ("likely", $"{Share(guess.Likely)}"), ("high", $"{Share(high)}")),
            { ByOperation.Count: > 0 } => YamlText.Map([.. guess.ByOperation.Select(time => (time.Operation.Value, (string?)$"{Share(time.Time)}"))]),
            _ => $"{Share(guess.Likely)}",
        };
    }
}
