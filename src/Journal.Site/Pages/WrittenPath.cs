namespace Journal.Site.Pages;

/// <summary>Paths of files as a maker writes them in an entry: `photos/a.jpg`, and also `./photos//a.jpg` or `../drill/photos/a.jpg`.</summary>
internal static class WrittenPath
{
    /// <summary>
    /// The files of the journal that a path may mean, the likeliest first: beside the entry, else from the folders above it
    /// down to the first below the journal, as reading looks for them. What leads out of the journal begins with <c>../</c>.
    /// </summary>
    /// <param name="entry">The entry's file, from the journal's folder with <c>/</c>.</param>
    /// <param name="written">What stands in its text, percent signs decoded.</param>
    public static IEnumerable<string> From(string entry, string written)
    {
        for (var slash = entry.LastIndexOf('/'); slash > 0; slash = entry.LastIndexOf('/', slash - 1))
        {
            yield return Joined(entry[..slash], written);
        }
    }

    private static string Joined(string folder, string written)
    {
        var steps = new Stack<string>();
        foreach (var step in $"{folder}/{written.Replace(Path.DirectorySeparatorChar, '/')}".Split('/').Where(step => step is not ("" or ".")))
        {
            if (step == ".." && steps.TryPeek(out var last) && last != "..")
            {
                steps.Pop();
            }
            else
            {
                steps.Push(step);
            }
        }

        return string.Join('/', steps.Reverse());
    }
}
