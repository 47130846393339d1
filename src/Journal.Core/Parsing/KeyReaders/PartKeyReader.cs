using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads a line of a parts list, of a build or of a plan.</summary>
internal sealed class PartKeyReader(FileScope scope, Id<Build>? build)
{
    private readonly VocabularyKeyReader words = new(scope);
    private readonly GuessKeyReader guesses = new(scope);
    private readonly Dictionary<string, Place> parts = new(StringComparer.Ordinal);

    /// <summary>The parts of a parts list, in its order; one without a usable id is reported and left out.</summary>
    public IReadOnlyList<Part> ReadAll(Fields fields)
    {
        return [.. fields.Items("parts").Select(node => Read(fields, node)).OfType<Part>()];
    }

    private Part? Read(Fields list, Node node)
    {
        var fields = node is TextNode ? null : list.Map(node, Keys.Part);
        var idNode = node is TextNode ? node : fields?["id"];
        if (fields is not null && !fields.Wants("id", "Give the part a short name, such as `id: gib-screw`."))
        {
            return null;
        }

        if (idNode is null || list.NewId(idNode, "id") is not { } id)
        {
            return null;
        }

        if (id == "whole")
        {
            scope.Log.Add(ProblemTable.ReservedName, idNode.Place, id);
            return null;
        }

        if (parts.TryGetValue(id, out var first))
        {
            scope.Log.Add(ProblemTable.DuplicateId, idNode.Place, "part", id, first.File, first.Line);
            return null;
        }

        parts.Add(id, idNode.Place);
        if (build is not null)
        {
            scope.Definitions.Add(new Definition(IdKind.Part, build, id, idNode.Place));
        }

        return fields is null ? new Part { Id = new(id), Title = Titles.FromId(id) } : Read(fields, new Id<Part>(id));
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
            Formerly = fields.FormerIds(id.Value, IdKind.Part, build),
        };
    }

    private PartRef? Like(Fields fields)
    {
        if (fields.Text("like") is not { } text)
        {
            return null;
        }

        var place = fields["like"]!.Place;
        if (text.Split('/') is not [var likeBuild, var likePart])
        {
            scope.Log.Add(ProblemTable.UnknownPartOf, place, text, "Give build and part: `bench-drill/head`.");
            return null;
        }

        scope.Mentions.Add(new Mention(IdKind.Part, null, text, place));
        return new PartRef(new(likeBuild), new(likePart));
    }
}
