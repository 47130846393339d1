using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads the maker's guesses: hours, hours by operation, or low, likely and high.</summary>
internal sealed class GuessKeyReader(FileScope scope)
{
    private readonly VocabularyKeyReader words = new(scope);

    /// <summary>A guess of one time, of a time for each operation, or of low, likely and high; what cannot be read is reported and null.</summary>
    public Guess? Read(Fields fields, string key) => fields[key] switch
    {
        null => null,
        MapNode map when map.Pairs.Any(pair => Keys.ThreePoints.Contains(pair.Key.Text)) => ThreePoints(map),
        MapNode map => ByOperation(map),
        var node => fields.DurationOf(node, key) is { } time ? new Guess { Likely = time } : null,
    };

    /// <summary>Times by operation, as the guesses for the whole build are given.</summary>
    public IReadOnlyList<(Id<Operation> Operation, Minutes Time)> Times(MapNode map)
    {
        var times = new List<(Id<Operation>, Minutes)>();
        var fields = new Fields(new MapNode(map.Place, []), scope);
        foreach (var (key, value) in fields.Pairs(map))
        {
            if (words.Operation(key) is { } operation && !value.IsBlank && fields.DurationOf(value, key.Text) is { } time)
            {
                times.Add((operation, time));
            }
        }

        return times;
    }

    private Guess? ThreePoints(MapNode map)
    {
        var fields = new Fields(map, scope, Keys.ThreePoints);
        if (!Keys.ThreePoints.All(key => fields.Wants(key, "Write `{low: 6h, likely: 9h, high: 16h}`.")))
        {
            return null;
        }

        if (fields.Duration("low") is not { } low || fields.Duration("likely") is not { } likely || fields.Duration("high") is not { } high)
        {
            return null;
        }

        if (low > likely || likely > high)
        {
            scope.Log.Add(ProblemTable.GuessOrder, map.Place, low, likely, high);
            return null;
        }

        return new Guess { Low = low, Likely = likely, High = high };
    }

    private Guess? ByOperation(MapNode map)
    {
        var times = Times(map);
        if (times.Count == 0)
        {
            if (map.Pairs.Count == 0)
            {
                scope.Log.Add(ProblemTable.NoGuess, map.Place);
            }

            return null;
        }

        return new Guess { Likely = times.Sum(time => time.Time), ByOperation = times };
    }
}
