using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads what an entry says beside its jobs: parts finished, snags, trials, readings, settings, purchases.</summary>
internal sealed class RemarkKeyReaders(FileScope scope, Entry entry, PartsList parts)
{
    private readonly VocabularyKeyReader words = new(scope);

    /// <summary>Adds to an entry all that its keys say beside jobs, mistakes and lessons.</summary>
    public Entry Read(Fields fields) => entry with
    {
        Heeded = fields.Mentions<Lesson>("heeded", IdKind.Lesson, null),
        Finished = [.. fields.Items("finished").SelectMany(node => Finished(fields, node))],
        Next = fields.Text("next"),
        Snags = Snags(fields),
        Cleared = fields.Mentions<Snag>("cleared", IdKind.Snag, entry.Build),
        Trials = [.. fields.Maps("trials", Keys.Trial).Select(Trial).OfType<Trial>()],
        Readings = [.. fields.Maps("readings", Keys.Reading).Select(Reading).OfType<MeasuredReading>()],
        Settings = [.. fields.Maps("settings", Keys.Setting).Select(Setting)],
        Milestone = fields.Text("milestone"),
        Story = fields.Text("story"),
        Bought = [.. fields.Maps("bought", Keys.Purchase).Select(Purchase).OfType<Purchase>()],
        Departure = fields.Text("departure"),
        Publish = fields.Publication("publish"),
    };

    private IEnumerable<Finished> Finished(Fields fields, Node node)
    {
        IEnumerable<(Node Key, Node Count)> pieces = node is MapNode map
            ? fields.Pairs(map).Select(pair => ((Node)pair.Key, pair.Value))
            : [(node, new TextNode(node.Place, "", IsQuoted: false))];
        foreach (var (key, count) in pieces)
        {
            if (!fields.TryId(key, "finished", out var id) || parts.Find(id, key.Place, scope.Log) is not { } part)
            {
                continue;
            }

            var finished = new Finished(part, count.IsBlank ? null : fields.CountOf(count, id));
            scope.Finished.Add(new FinishedClaim(entry.Date, entry.Id, finished, key.Place));
            yield return finished;
        }
    }

    private List<Snag> Snags(Fields fields)
    {
        var snags = new List<Snag>();
        foreach (var node in fields.Items("snags"))
        {
            var given = node is MapNode ? fields.Map(node, Keys.Snag) : null;
            var text = given is null ? fields.TextOf(node, "snags") : given.Wants("text", "Describe what is still to put right.") ? given.Text("text") : "";
            if (text is null)
            {
                continue;
            }

            var idNode = given?["id"];
            var id = (idNode is null ? null : given!.NewId(idNode, "id")) ?? $"{entry.Id}-{snags.Count + 1}";
            scope.Definitions.Add(new Definition(IdKind.Snag, entry.Build, id, (idNode ?? node).Place));
            snags.Add(new Snag(new(id), text));
        }

        return snags;
    }

    private static Trial? Trial(Fields fields) => !fields.Wants("on", "Give what it ran on: `air`, `steam`, `power`, `hand` …") ? null : new Trial
    {
        On = fields.Text("on") ?? "",
        Pressure = fields.Text("pressure"),
        Speed = fields.Text("speed"),
        Time = Length(fields),
        Result = fields.Text("result"),
    };

    // Here a bare number means minutes, as the key says.
    private static Minutes? Length(Fields fields) =>
        fields["minutes"] is TextNode { Text: var text } && Values.Duration.TryParse($"{text.Trim()}m", out var minutes, out _)
            ? minutes
            : fields.Duration("minutes");

    private MeasuredReading? Reading(Fields fields)
    {
        if (!fields.Wants("feature", "Give what was measured, such as `feature: bore`."))
        {
            return null;
        }

        var feature = fields.Text("feature") ?? "";
        var dot = feature.IndexOf('.', StringComparison.Ordinal);
        var named = dot > 0 && parts.Has(feature[..dot]) ? feature[..dot] : null;
        return new MeasuredReading
        {
            Feature = named is null ? feature : feature[(dot + 1)..],
            Part = named is not null ? new Id<Part>(named) : PartOf(fields),
            Required = AsWritten(fields, "required"),
            Actual = AsWritten(fields, "actual"),
            With = fields.Mention<Tool>("with", IdKind.Tool, null),
            Place = fields.Place,
        };
    }

    // What it means depends on the build and on other entries; its place is kept until all are read.
    private string? AsWritten(Fields fields, string key)
    {
        if (fields[key] is TextNode value)
        {
            scope.Values.Add(new WrittenValue(fields.Place, key, value));
        }

        return fields.Text(key);
    }

    // The part given, else the one part of the job named, else of the first job that is for a single part.
    private Id<Part>? PartOf(Fields fields)
    {
        if (fields["part"] is { } node)
        {
            return fields.TryId(node, "part", out var id) ? parts.Find(id, node.Place, scope.Log) : null;
        }

        var jobs = fields.Has("job") ? entry.Jobs.Where(job => job.Number == JobNumber(fields)) : entry.Jobs;
        return jobs.FirstOrDefault(job => job.Parts.Count == 1)?.Parts[0].Part;
    }

    private Setting Setting(Fields fields) => new()
    {
        Job = JobNumber(fields),
        Diameter = AsWritten(fields, "diameter"),
        Rpm = fields.Number("rpm", 0.1m, "Write revolutions per minute as a number, such as `480`."),
        Feed = AsWritten(fields, "feed"),
        Teeth = fields.Count("teeth"),
        Width = AsWritten(fields, "width"),
        Depth = AsWritten(fields, "depth"),
        Material = words.Material(fields),
        Cutter = fields.Text("cutter"),
        Machine = fields.Mention<Tool>("machine", IdKind.Tool, null),
        Coolant = fields.Text("coolant"),
        Verdict = fields.Text("verdict"),
        Note = fields.Text("note"),
        Place = fields.Place,
    };

    private Purchase? Purchase(Fields fields)
    {
        if (!fields.Wants("what", "Give what was bought.") || !fields.Wants("cost", "Write only the amount, such as `12.50`.") || fields.Cost("cost") is not { } cost)
        {
            return null;
        }

        var target = fields["for"] is { } node && fields.TryId(node, "for", out var id) ? id : null;
        var isPart = target is not null && parts.Has(target);
        if (target is not null && !isPart)
        {
            scope.Mentions.Add(new Mention(IdKind.PartOrTool, entry.Build, target, fields["for"]!.Place));
        }

        var kind = fields.Choice<PurchaseKind>("kind") ?? PurchaseKind.Consumable;
        if (kind == PurchaseKind.Kit)
        {
            scope.Kits.Add(new KitClaim(cost, fields["cost"]!.Place));
        }

        return new Purchase
        {
            What = fields.Text("what") ?? "",
            Cost = cost,
            Kind = kind,
            ForPart = isPart ? new Id<Part>(target!) : null,
            ForTool = isPart || target is null ? null : new Id<Tool>(target),
            Because = fields.Mention<Mistake>("because", IdKind.Mistake, entry.Build),
        };
    }

    private int JobNumber(Fields fields)
    {
        var number = fields.Count("job") ?? 1;
        if (number <= Math.Max(1, entry.Jobs.Count))
        {
            return number;
        }

        scope.Log.Add(ProblemTable.UnknownJob, fields["job"]!.Place, number, entry.Jobs.Count);
        return 1;
    }
}
