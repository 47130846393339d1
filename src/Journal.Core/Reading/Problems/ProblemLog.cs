using Journal.Core.Model;

namespace Journal.Core.Reading.Problems;

/// <summary>Collects the problems of one file; logs of many files are joined in the end.</summary>
internal sealed class ProblemLog
{
    private readonly List<Problem> problems = [];

    public IReadOnlyList<Problem> Problems => problems;

    public void Add(ProblemKind kind, Place place, params object[] details) => problems.Add(kind.At(place, details));
}
