using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Bench.Tonight;

/// <summary>Jobs as they are offered: the last first, then those done most often.</summary>
internal static class JobChoices
{
    private const int MostAtHand = 9;

    /// <summary>Last time's job; null where there is nothing to go on with.</summary>
    public static JobChoiceView? Last(BenchNow now, Build build)
    {
        var part = build.Parts.Count == 0 || now.State is not { } state ? null : Usual.Part(build, state);
        var operation = Usual.Operation(build, part);
        return part is null && operation is null ? null
            : new JobChoiceView(part?.Value ?? "whole", operation?.Value ?? "", JobTitle.Of(now.Titles, build.Id, part?.Value, operation is { } known ? [known.Value] : []));
    }

    /// <summary>The parts: the likeliest, then the others in the order of the list. The build as a whole is one of them.</summary>
    public static (IReadOnlyList<ChoiceView> AtHand, IReadOnlyList<ChoiceView> Others) Parts(BenchNow now, Build build)
    {
        var last = Last(now, build)?.Part;
        var finished = now.State?.Finished.Select(part => part.Part.Value).ToHashSet(StringComparer.Ordinal) ?? [];
        var often = build.Entries.SelectMany(entry => entry.Jobs).SelectMany(job => job.IsGeneral ? ["whole"] : job.Parts.Select(share => share.Part.Value)).CountBy(part => part).ToDictionary(StringComparer.Ordinal);
        var all = build.Parts.Select(part => (Id: part.Id.Value, part.Title)).Append((Id: "whole", Title: "The build as a whole")).ToList();
        return Split(all, last, id => finished.Contains(id) ? -1 : often.GetValueOrDefault(id));
    }

    /// <summary>The operations: the likeliest, then the others of the vocabulary.</summary>
    public static (IReadOnlyList<ChoiceView> AtHand, IReadOnlyList<ChoiceView> Others) Operations(BenchNow now, Build build)
    {
        var often = now.Journal.Entries.SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).CountBy(operation => operation.Value).ToDictionary(StringComparer.Ordinal);
        var all = now.Journal.Vocabulary.Operations.Ids.Select(id => (Id: id.Value, Title: now.Titles.Of(id))).ToList();
        return Split(all, Last(now, build)?.Operation, id => often.GetValueOrDefault(id));
    }

    private static (IReadOnlyList<ChoiceView> AtHand, IReadOnlyList<ChoiceView> Others) Split(List<(string Id, string Title)> all, string? last, Func<string, int> often)
    {
        var atHand = all.Index().OrderByDescending(one => one.Item.Id == last).ThenByDescending(one => often(one.Item.Id)).ThenBy(one => one.Index).Take(MostAtHand).Select(one => one.Item).ToList();
        return ([.. atHand.Select((one, i) => new ChoiceView(one.Id, one.Title, i == 0))], [.. all.Except(atHand).Select(one => new ChoiceView(one.Id, one.Title))]);
    }
}
