using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Yaml;

namespace Journal.Core.Reading.Shapes;

/// <summary>Reads a line of a parts list, of a build or of a plan.</summary>
internal sealed class PartShape(FileScope scope, Id<Build>? build)
{
    private readonly TradeWords words = new(scope);
    private readonly GuessShape guesses = new(scope);
    private readonly Dictionary<string, Place> planned = new(StringComparer.Ordinal);

    public IReadOnlyList<Part> ReadAll(Fields fields)
    {
        var parts = new List<Part>();
        foreach (var node in fields.Items("parts"))
        {
            if (Read(fields, node) is { } part)
            {
                parts.Add(part);
            }
        }

        return [.. parts.DistinctBy(part => part.Id)];
    }

    private Part? Read(Fields list, Node node)
    {
        var fields = node is TextNode ? null : list.Map(node, Keys.Part);
        var idNode = node is TextNode ? node : fields?["id"];
        if (fields is not null && !fields.Wants("id", "Give the part a short name, such as `id: gib-screw`."))
        {
            return null;
        }

        if (idNode is null || !list.TryId(idNode, "id", out var id))
        {
            return null;
        }

        if (id == "whole")
        {
            scope.Log.Add(ProblemTable.ReservedName, idNode.Place, id);
            return null;
        }

        Define(id, idNode.Place);
        return fields is null ? new Part { Id = new(id), Title = Titles.FromId(id) } : Read(fields, new Id<Part>(id));
    }

    // The parts of a plan are known in its own list alone: two plans may each have a base.
    private void Define(string id, Place place)
    {
        if (build is not null)
        {
            scope.Definitions.Add(new Definition(IdKind.Part, build, id, place));
        }
        else if (!planned.TryAdd(id, place))
        {
            scope.Log.Add(ProblemTable.DuplicateId, place, IdKind.Part.ToWord(), id, planned[id].File, planned[id].Line);
        }
    }

    private Part Read(Fields fields, Id<Part> id)
    {
        var (guess, operations) = (guesses.Read(fields, "guess"), (IReadOnlyList<Id<Operation>>)[]);
        if (fields["operations"] is MapNode byOperation)
        {
            var times = guesses.Times(byOperation);
            operations = [.. times.Select(time => time.Operation)];
            guess ??= times.Count == 0 ? null : new Guess { Likely = times.Sum(time => time.Time), ByOperation = times, ForOnePiece = true };
        }
        else
        {
            operations = words.Operations(fields, "operations");
        }

        if (operations.Count == 0 && guess is not null)
        {
            operations = [.. guess.ByOperation.Select(time => time.Operation)];
        }

        return new Part
        {
            Id = id,
            Title = fields.Text("title") ?? id.ToTitle(),
            Item = fields.Text("item"),
            Quantity = fields.Count("quantity") ?? 1,
            Material = words.Material(fields),
            Stock = words.Stock(fields),
            Supplied = fields.Text("supplied"),
            Drawing = fields.Text("drawing"),
            Operations = operations,
            Guess = guess,
            Reguess = guesses.Read(fields, "reguess"),
            Like = Like(fields),
        };
    }

    private PartRef? Like(Fields fields)
    {
        if (fields.Text("like") is not { } text)
        {
            return null;
        }

        var place = fields["like"]!.Place;
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            scope.Log.Add(ProblemTable.UnknownPartOf, place, text, "Name build and part: `bench-drill/head`.");
            return null;
        }

        scope.Mentions.Add(new Mention(IdKind.Part, null, text, place));
        return new PartRef(new(text[..slash]), new(text[(slash + 1)..]));
    }
}
