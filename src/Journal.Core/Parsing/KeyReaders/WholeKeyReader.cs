using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads the guesses for work on the build as a whole.</summary>
internal static class WholeKeyReader
{
    /// <summary>The guesses under <c>whole</c>, by operation; empty where there are none.</summary>
    public static IReadOnlyDictionary<Id<Operation>, Minutes> Read(Fields fields, FileScope scope)
    {
        switch (fields["whole"])
        {
            case null:
                return new Dictionary<Id<Operation>, Minutes>();
            case MapNode map:
                return new GuessKeyReader(scope).Times(map).DistinctBy(time => time.Operation).ToDictionary(time => time.Operation, time => time.Time);
            case var node:
                scope.Log.Add(ProblemTable.NotKeys, node.Place);
                return new Dictionary<Id<Operation>, Minutes>();
        }
    }
}
