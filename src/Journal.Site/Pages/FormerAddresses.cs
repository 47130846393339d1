using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>The addresses that pages had while their parts, lessons, operations and builds were called otherwise.</summary>
internal static class FormerAddresses
{
    /// <summary>A page for each of them, which leads to the new one; none where another page has the address now.</summary>
    /// <param name="figures">The figures of the site.</param>
    /// <param name="pages">The pages that there are.</param>
    public static IEnumerable<PageOrder> Of(SiteFigures figures, IReadOnlyList<PageOrder> pages)
    {
        var there = pages.Select(page => page.Address).ToHashSet(StringComparer.Ordinal);
        var former = OfThings(figures).Where(pair => there.Contains(pair.Now)).ToList();
        former.AddRange(OfBuilds(figures, [.. there.Select(address => (Old: address, Now: address)), .. former]));
        return former.Where(pair => !there.Contains(pair.Old))
            .DistinctBy(pair => pair.Old)
            .Select(pair => new PageOrder(pair.Old, MovedPage.Template, () => MovedPage.Of(figures, pair.Old, pair.Now)));
    }

    private static IEnumerable<(string Old, string Now)> OfThings(SiteFigures figures)
    {
        foreach (var build in figures.Journal.Builds)
        {
            foreach (var part in build.Parts)
            {
                foreach (var old in part.Formerly)
                {
                    yield return (Addresses.Of(new PartRef(build.Id, new(old))), Addresses.Of(new PartRef(build.Id, part.Id)));
                }
            }
        }

        foreach (var lesson in figures.ShownLessons)
        {
            foreach (var old in lesson.Lesson.Formerly)
            {
                yield return (Addresses.Of(new Id<Lesson>(old)), Addresses.Of(lesson.Id));
            }
        }

        foreach (var operation in figures.Journal.Vocabulary.Operations.Ids.Select(figures.Journal.Vocabulary.Operation))
        {
            foreach (var old in operation.Formerly)
            {
                yield return (Addresses.Of(new Id<Operation>(old)), Addresses.Of(operation.Id));
            }
        }
    }

    // All in the folder of a build was in its former one; lessons without an id, and the plan, were called after it.
    private static IEnumerable<(string Old, string Now)> OfBuilds(SiteFigures figures, IReadOnlyList<(string Old, string Now)> addresses) =>
        from build in figures.Journal.Builds
        from name in build.Formerly
        from address in addresses
        let old = Renamed(address.Old, build.Id.Value, name)
        where old is not null
        select (old, address.Now);

    private static string? Renamed(string address, string now, string old) =>
        address.StartsWith($"{now}/", StringComparison.Ordinal) ? old + address[now.Length..]
            : address == $"plan/{now}.html" ? $"plan/{old}.html"
            : address.StartsWith($"lesson/{now}-", StringComparison.Ordinal) ? $"lesson/{old}{address[("lesson/".Length + now.Length)..]}"
            : null;
}
