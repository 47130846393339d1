using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Yaml;

namespace Journal.Core.Reading.Shapes;

/// <summary>Reads the guesses for work on the build as a whole.</summary>
internal static class WholeShape
{
    public static IReadOnlyDictionary<Id<Operation>, Minutes> Read(Fields fields, FileScope scope)
    {
        switch (fields["whole"])
        {
            case null:
                return new Dictionary<Id<Operation>, Minutes>();
            case MapNode map:
                return new GuessShape(scope).Times(map).DistinctBy(time => time.Operation).ToDictionary(time => time.Operation, time => time.Time);
            case var node:
                scope.Log.Add(ProblemTable.NotKeys, node.Place);
                return new Dictionary<Id<Operation>, Minutes>();
        }
    }
}
