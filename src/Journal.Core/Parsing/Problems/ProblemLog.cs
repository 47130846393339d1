using Journal.Core.Model;

namespace Journal.Core.Parsing.Problems;

/// <summary>
/// Collects problems; logs of many files are joined in the end. After some hundreds in one file nobody reads on, and
/// seeking the nearest word for each would take minutes: the rest of that file is left out, and it is said so.
/// </summary>
internal sealed class ProblemLog
{
    private const int MostInAFile = 500;
    private readonly List<Problem> problems = [];
    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);

    /// <summary>The problems so far, in the order found.</summary>
    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>What is told of one file alone.</summary>
    public ProblemLog Of(string file)
    {
        var one = new ProblemLog();
        one.problems.AddRange(problems.Where(problem => problem.Place.File == file));
        return one;
    }

    /// <summary>Adds a problem, unless its file already has too many.</summary>
    public void Add(ProblemKind kind, Place place, params object[] details)
    {
        if (HasRoomFor(place))
        {
            problems.Add(kind.At(place, details));
        }
    }

    /// <summary>Reports a word that is not among those known, with the nearest of them.</summary>
    public void AddUnknown(ProblemKind kind, Place place, string written, IReadOnlyCollection<string> known, string whatTheyAre)
    {
        if (HasRoomFor(place))
        {
            problems.Add(kind.At(place, written, Suggestion.For(written, known, whatTheyAre)));
        }
    }

    private bool HasRoomFor(Place place)
    {
        var count = counts[place.File] = counts.GetValueOrDefault(place.File) + 1;
        if (count == MostInAFile + 1)
        {
            problems.Add(ProblemTable.TooManyProblems.At(place, MostInAFile));
        }

        return count <= MostInAFile;
    }
}
