using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>Work that may call for cautions: what is done to what.</summary>
/// <param name="Operations">What is done.</param>
/// <param name="Materials">What it is done to.</param>
public sealed record CautionedWork(IReadOnlyList<Id<Operation>> Operations, IReadOnlyList<Id<MaterialFamily>> Materials);

/// <summary>
/// Which cautions work calls for, by the rule at the head of <c>shared/cautions.yaml</c>. Pressure, steam, gas and mains come first,
/// then what maims first; a journal has no word in it, so nothing in it can take one away.
/// </summary>
public static class Cautions
{
    /// <summary>How many lines an entry has room for.</summary>
    public const int Few = 3;

    private static readonly Caution[] MostUrgentFirst = [.. CautionLoader.Shared.OrderBy(caution => caution.Kind == CautionKind.Other)];

    private static readonly ILookup<Id<Operation>, Caution> OfOperation = CautionLoader.Shared
        .SelectMany(caution => caution.Operations, (caution, id) => (id, caution)).ToLookup(pair => pair.id, pair => pair.caution);

    // The rule taken apart: what calls for a caution is an operation, a material, or one of each.
    private static readonly ILookup<Id<Operation>, Caution> ByOperation = CautionLoader.Shared.Where(caution => caution.Materials.Count == 0)
        .SelectMany(caution => caution.Operations, (caution, id) => (id, caution)).ToLookup(pair => pair.id, pair => pair.caution);

    private static readonly ILookup<Id<MaterialFamily>, Caution> ByMaterial = CautionLoader.Shared.Where(caution => caution.Operations.Count == 0)
        .SelectMany(caution => caution.Materials, (caution, id) => (id, caution)).ToLookup(pair => pair.id, pair => pair.caution);

    private static readonly ILookup<(Id<Operation>, Id<MaterialFamily>), Caution> ByBoth = CautionLoader.Shared
        .SelectMany(caution => caution.Operations.SelectMany(operation => caution.Materials, (operation, material) => (Key: (operation, material), caution)))
        .ToLookup(pair => pair.Key, pair => pair.caution);

    /// <summary>What some work calls for, each caution once.</summary>
    /// <param name="work">The work; materials count only for the operations beside them.</param>
    /// <param name="texts">What was written about it.</param>
    public static IReadOnlyList<Caution> For(IEnumerable<CautionedWork> work, params IEnumerable<string> texts)
    {
        var called = CautionLoader.SharedWords.In(texts);
        foreach (var one in work)
        {
            foreach (var material in one.Materials)
            {
                called.UnionWith(ByMaterial[material]);
            }

            foreach (var operation in one.Operations)
            {
                called.UnionWith(ByOperation[operation]);
                foreach (var material in one.Materials)
                {
                    called.UnionWith(ByBoth[(operation, material)]);
                }
            }
        }

        return [.. MostUrgentFirst.Where(called.Contains)];
    }

    /// <summary>What an operation may call for, whatever it is done to.</summary>
    public static IReadOnlyList<Caution> For(Id<Operation> operation) => [.. MostUrgentFirst.Where(OfOperation[operation].Contains)];

    /// <summary>What an entry calls for by its jobs, its words and what its trials ran on.</summary>
    public static IReadOnlyList<Caution> For(Build build, Entry entry) => For(entry.Jobs.Select(job => WorkOf(job, build)), TextsOf(entry));

    /// <summary>What has been done to a part calls for, and what it is called.</summary>
    /// <param name="part">The part.</param>
    /// <param name="entries">The entries that worked on it.</param>
    public static IReadOnlyList<Caution> For(Part part, IEnumerable<Entry> entries) => For(
        entries.SelectMany(entry => entry.Jobs).Where(job => job.Parts.Any(share => share.Part == part.Id))
            .Select(job => new CautionedWork(job.Operations, part.Material is { } material ? [material.Family] : [])),
        [part.Title, part.Material?.Grade ?? ""]);

    /// <summary>What a plan calls for: its parts by their operations, materials and titles, and the work on the whole.</summary>
    public static IReadOnlyList<Caution> For(Plan plan) => For(
        [
            .. plan.Parts.Select(part => new CautionedWork(
                [.. part.Operations.Concat(part.Guess?.ByOperation.Select(one => one.Operation) ?? []).Distinct()],
                part.Material is { } material ? [material.Family] : [])),
            new CautionedWork([.. plan.Whole.Keys], []),
        ],
        plan.Parts.Select(part => $"{part.Title} {part.Material?.Grade}"));

    /// <summary>
    /// The few that matter most: one of each kind that cannot be left out, then others as far as there is room. The four kinds are
    /// never cut, room or not.
    /// </summary>
    public static IReadOnlyList<Caution> FewOf(IReadOnlyList<Caution> called)
    {
        List<Caution> always = [.. called.Where(caution => caution.Kind != CautionKind.Other).DistinctBy(caution => caution.Kind)];
        return [.. always, .. called.Except(always).Take(Few - always.Count)];
    }

    private static CautionedWork WorkOf(Job job, Build build) => new(
        job.Operations,
        [.. job.Parts.Select(share => build.Parts.FirstOrDefault(part => part.Id == share.Part)?.Material?.Family).OfType<Id<MaterialFamily>>()]);

    private static IEnumerable<string> TextsOf(Entry entry) =>
        [entry.Title, entry.Body.Text, .. entry.Trials.Select(trial => $"on {trial.On} {trial.Pressure} {trial.Result}")];
}
