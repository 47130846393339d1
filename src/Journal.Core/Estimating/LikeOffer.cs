using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>A finished part that a part to come may be like, found by its title: offered to the maker and never assumed.</summary>
/// <param name="Part">The part to come, which has neither guess nor <c>like</c>.</param>
/// <param name="Like">The finished part.</param>
public sealed record LikeOffer(Part Part, PartRef Like)
{
    // Of the words of both titles together so many must be the same: two thirds are “Bed casting” and “Bed”, or “Box table” and “Table”.
    private const double Close = 0.66;

    /// <summary>The offer as a sentence: “Bed is much like `bench-drill/bed`: say `like: bench-drill/bed`?”</summary>
    public string Words => $"{Part.Title} is much like `{Like}`: say `like: {Like}`?";

    /// <summary>For all plans that are not begun and all builds that are not finished, each with the file in which to say it.</summary>
    public static IReadOnlyList<(string File, LikeOffer Offer)> For(MakerJournal journal, DateOnly today) =>
    [
        .. journal.Plans.Where(plan => journal.BegunAs(plan) is null).SelectMany(plan => For(plan, journal, today), (plan, offer) => (plan.File, offer)),
        .. journal.Builds.Where(build => build.Status != BuildStatus.Finished).SelectMany(build => For(build, journal, today), (build, offer) => ($"{build.Folder}/build.yaml", offer)),
    ];

    private static IReadOnlyList<LikeOffer> For(Plan plan, MakerJournal journal, DateOnly today) =>
        plan.Parts.Any(MayBeOffered) ? For(plan.Parts, journal, History.Of(journal, today)) : [];

    private static IReadOnlyList<LikeOffer> For(Build build, MakerJournal journal, DateOnly today) =>
        build.Parts.Any(MayBeOffered) ? For(EstimateSubject.Of(journal.StoodOn(today), build.Id).NotBegun, journal, History.Of(journal, today)) : [];

    /// <summary>
    /// The nearest finished part for each part that may have one; none where no title is close enough. Only a part without a
    /// guess gets an offer: there a part of close title cuts the error by a fifth (docs/estimating.md, Like); with a guess it
    /// was not measured.
    /// </summary>
    internal static IReadOnlyList<LikeOffer> For(IEnumerable<Part> parts, MakerJournal journal, History history)
    {
        List<Part> bare = [.. parts.Where(MayBeOffered)];
        if (bare.Count == 0)
        {
            return [];
        }

        var listed = journal.Builds.ToDictionary(build => build.Id, build => build.PartsById());
        List<(HistoryPart Past, Part Part)> known = [.. history.Parts.Select(past => (past, listed[past.Ref.Build][past.Ref.Part]))];
        return
        [
            .. from part in bare
               let nearest = known
                   .Where(one => Closeness(part, one.Part) >= Close)
                   .OrderByDescending(one => Closeness(part, one.Part))
                   .ThenByDescending(one => one.Part.Material is { } material && material.Family == part.Material?.Family)
                   .ThenByDescending(one => one.Past.Work.Count(work => part.Operations.Contains(work.Operation)))
                   .ThenByDescending(one => one.Past.Finished)
                   .Select(one => (PartRef?)one.Past.Ref)
                   .FirstOrDefault()
               where nearest is not null
               select new LikeOffer(part, nearest.Value),
        ];
    }

    private static bool MayBeOffered(Part part) => part.CurrentGuess is null && part.Like is null;

    // Dice's coefficient over the words of both titles, where the last word, the thing itself, is the same: a table arm is no table.
    private static double Closeness(Part part, Part other)
    {
        var (mine, its) = (WordsOf(part.Title), WordsOf(other.Title));
        return mine.Count == 0 || its.Count == 0 || mine[^1] != its[^1] ? 0
            : 2.0 * mine.Intersect(its).Count() / (mine.Count + its.Count);
    }

    private static List<string> WordsOf(string title) =>
    [
        .. new string([.. title.Select(letter => char.IsLetter(letter) ? char.ToLowerInvariant(letter) : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Except(SaysNothing)
            .Select(word => word.Length > 3 && word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) ? word[..^1] : word)
            .Distinct(),
    ];

    // Words that do not tell one thing from another.
    private static readonly string[] SaysNothing = ["a", "an", "the", "of", "for", "and", "with", "in", "off", "casting", "forging", "blank"];
}
