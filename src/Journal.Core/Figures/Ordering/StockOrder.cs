using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures.Ordering;

/// <summary>Stock still needed for the parts of a build or plan that are not begun.</summary>
/// <param name="Name">The build or plan.</param>
/// <param name="Title">Its title.</param>
/// <param name="Bars">What is sold by length, by material, form and section.</param>
/// <param name="Others">Stock that is not sold by length, or whose length is not given: a line for each part.</param>
/// <param name="Supplied">Parts whose stock is said to be supplied; nothing is ordered for them.</param>
/// <param name="Unsaid">Parts that say nothing of their stock.</param>
/// <param name="Terms">The length of a bar and the allowance that the bars were worked out with.</param>
public sealed record StockOrder(
    string Name,
    string Title,
    IReadOnlyList<BarOrder> Bars,
    IReadOnlyList<OtherOrder> Others,
    IReadOnlyList<Part> Supplied,
    IReadOnlyList<Part> Unsaid,
    OrderTerms Terms)
{
    /// <summary>The order for what a build still lacks: parts without any hours, as many pieces as are to go.</summary>
    public static StockOrder Of(MakerJournal journal, Build build, Func<LengthUnit, OrderTerms> terms)
    {
        var begun = build.Entries.SelectMany(entry => entry.Jobs).SelectMany(job => job.Parts).Select(share => share.Part).ToHashSet();
        var left = State.Of(journal).Builds.Single(state => state.Build == build.Id).ToGo.ToDictionary(part => part.Part, part => part.Pieces);
        return Of(build.Id.Value, build.Title, [.. build.Parts.Where(part => !begun.Contains(part.Id) && left.ContainsKey(part.Id)).Select(part => (part, left[part.Id]))], build.Units, terms);
    }

    /// <summary>The order for a plan: all of it.</summary>
    public static StockOrder Of(MakerJournal journal, Plan plan, Func<LengthUnit, OrderTerms> terms) =>
        Of(plan.Id.Value, plan.Title, [.. plan.Parts.Select(part => (part, part.Quantity))], journal.Units, terms);

    private static StockOrder Of(string name, string title, IReadOnlyList<(Part Part, int Pieces)> parts, LengthUnit unit, Func<LengthUnit, OrderTerms> termsIn)
    {
        var terms = termsIn(unit);
        var wanted = parts.Where(one => one.Part.Supplied is null && one.Part.Stock is not null).Select(one => (one.Part, one.Pieces, Size: StockSize.Of(one.Part.Stock!, unit))).ToList();
        var bars = wanted.Where(one => one.Size.Length is not null)
            .GroupBy(one => (one.Part.Material, one.Part.Stock!.Form, one.Size.Section))
            .OrderBy(group => group.Key.Material?.Family.Value, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Form.Value, StringComparer.Ordinal)
            .Select(group => BarOrder.Of(group.Key.Material, group.Key.Form, group.Key.Section!, [.. group.SelectMany(one => Enumerable.Repeat(new Cut(one.Part, one.Size.Length!.Value), one.Pieces))], terms));
        return new StockOrder(
            name,
            title,
            [.. bars],
            [.. wanted.Where(one => one.Size.Length is null).Select(one => new OtherOrder(one.Part, one.Pieces))],
            [.. parts.Select(one => one.Part).Where(part => part.Supplied is not null)],
            [.. parts.Select(one => one.Part).Where(part => part.Supplied is null && part.Stock is null)],
            terms);
    }
}

/// <summary>What bars are worked out with.</summary>
/// <param name="Bar">How long a bar is, as it is sold.</param>
/// <param name="Allowance">What each piece takes beyond its own length, for sawing and for facing both ends.</param>
public sealed record OrderTerms(Length Bar, Length Allowance)
{
    /// <summary>A metre and 5 mm, or 36 in and 0.2 in: a saw cut of some 2 mm and 1.5 mm to face at each end (common practice).</summary>
    public static OrderTerms Usual(LengthUnit unit) => unit == LengthUnit.Inch
        ? new OrderTerms(new Length(36, unit), new Length(0.2m, unit))
        : new OrderTerms(new Length(1000, unit), new Length(5, unit));
}

/// <summary>A piece to cut.</summary>
/// <param name="Part">The part that it is for.</param>
/// <param name="Length">How long it is, without allowance.</param>
public sealed record Cut(Part Part, Length Length);

/// <summary>Bars of one material, form and section.</summary>
/// <param name="Material">What they are made of; null where the parts do not say.</param>
/// <param name="Form">Their form.</param>
/// <param name="Section">The size of the cross-section, as written.</param>
/// <param name="Total">All pieces with their allowances.</param>
/// <param name="Bars">The pieces by bar, longest first.</param>
public sealed record BarOrder(Material? Material, Id<StockForm> Form, string Section, Length Total, IReadOnlyList<IReadOnlyList<Cut>> Bars)
{
    /// <summary>All pieces.</summary>
    public IEnumerable<Cut> Cuts => Bars.SelectMany(bar => bar);

    /// <summary>
    /// Cuts pieces of one material, form and section from bars; all lengths come in the unit of the bar. A piece longer than
    /// a bar gets one of its own.
    /// </summary>
    internal static BarOrder Of(Material? material, Id<StockForm> form, string section, IReadOnlyList<Cut> cuts, OrderTerms terms)
    {
        var unit = terms.Bar.Unit;
        decimal Taken(Cut cut) => cut.Length.In(unit).Value + terms.Allowance.In(unit).Value;
        return new BarOrder(material, form, section, new Length(cuts.Sum(Taken), unit), BarCutting.FirstFitDecreasing(cuts, Taken, terms.Bar.Value));
    }

    /// <summary>What is left of a bar once its pieces are cut off; negative where a piece is longer than a bar.</summary>
    public static Length LeftOf(IReadOnlyList<Cut> bar, OrderTerms terms)
    {
        var unit = terms.Bar.Unit;
        return terms.Bar with { Value = terms.Bar.Value - bar.Sum(cut => cut.Length.In(unit).Value + terms.Allowance.In(unit).Value) };
    }
}

/// <summary>Stock that is not worked out in bars.</summary>
/// <param name="Part">The part that it is for, with the stock as written.</param>
/// <param name="Pieces">How many pieces are needed.</param>
public sealed record OtherOrder(Part Part, int Pieces);
