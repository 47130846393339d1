using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures.Ordering;

/// <summary>A size of stock taken apart: <c>25 x 10 x 450</c> of flat bar is its section and a length.</summary>
/// <param name="Section">What goes across, as written; null where the size says nothing of that form.</param>
/// <param name="Length">How long it is; null where that is not said.</param>
public readonly record struct StockSize(string? Section, Length? Length)
{
    /// <summary>Forms that are sold by length, with how many measures their section has.</summary>
    private static readonly Dictionary<string, int> Measures = new(StringComparer.Ordinal)
    {
        ["round"] = 1, ["square"] = 1, ["hexagon"] = 1, ["wire"] = 1, ["flat"] = 2, ["ground-flat"] = 2, ["tube"] = 2, ["wood"] = 2,
    };

    /// <summary>Whether a form is sold by length.</summary>
    public static bool IsByLength(Id<StockForm> form) => Measures.ContainsKey(form.Value);

    /// <summary>Takes a size apart; of what is not sold by length, or is written otherwise, the whole is the section.</summary>
    /// <param name="stock">The stock as written.</param>
    /// <param name="unit">The unit of the drawing.</param>
    public static StockSize Of(Stock stock, LengthUnit unit)
    {
        var pieces = stock.Size?.Split(['x', '×', 'X'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];
        if (!Measures.TryGetValue(stock.Form.Value, out var across) || pieces.Length < across || pieces.Length > across + 1 || !Array.TrueForAll(pieces, IsLength))
        {
            return new StockSize(stock.Size, null);
        }

        var section = string.Join(" x ", pieces[..across]);
        return new StockSize(section, pieces.Length > across && LengthText.TryParse(pieces[^1], unit, out var length, out _) && length.Value > 0 ? length : null);

        bool IsLength(string text) => LengthText.TryParse(text, unit, out _, out _);
    }
}
