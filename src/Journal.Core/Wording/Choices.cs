using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Wording;

/// <summary>The fixed choices of a journal as people read them, in the terminal and on pages alike.</summary>
public static class Choices
{
    /// <summary>What became of a part, within a sentence.</summary>
    public static string InWords(this Outcome outcome) => outcome switch
    {
        Outcome.Rework => "reworked",
        Outcome.Repair => "repaired",
        Outcome.Scrap => "scrapped",
        Outcome.Remade => "made again",
        _ => "used as it is",
    };

    /// <summary>What a maker would do next time.</summary>
    public static string InWords(this Verdict verdict) => verdict switch
    {
        Verdict.DoAgain => "do it again",
        Verdict.WorkedBut => "it worked, but",
        _ => "never again",
    };

    /// <summary>A kind of cost, as a heading or the first cell of a row.</summary>
    public static string Title(this CostKind kind) => kind switch
    {
        CostKind.Consumable => "Consumables",
        CostKind.Service => "Services",
        CostKind.Mistake => "Mistakes",
        _ => Titles.FromId(kind.ToWord()),
    };
}
