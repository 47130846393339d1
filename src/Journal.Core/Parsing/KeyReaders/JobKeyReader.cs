using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads the jobs of an entry, in the short form of one job or as a list with defaults.</summary>
internal sealed class JobKeyReader(FileScope scope, EntryRef entry, DateOnly date, PartsList parts)
{
    private static readonly Minutes MostOfAJob = new(600_000);

    private static readonly Job Unsaid = new() { Number = 1, Parts = [], Operations = [new("other")], Time = Minutes.Zero };

    private readonly VocabularyKeyReader words = new(scope);
    private readonly List<Tool> toolsDefined = [];

    /// <summary>Tools that the jobs define under <c>made</c>.</summary>
    public IReadOnlyList<Tool> ToolsDefined => toolsDefined;

    /// <summary>One job at least, whatever was written: all that is reckoned of an entry begins with its first job.</summary>
    public IReadOnlyList<Job> ReadAll(Fields fields)
    {
        if (fields["jobs"] is not { } list)
        {
            return [Read(fields, fields, 1)];
        }

        foreach (var key in Keys.Job.Except(Keys.JobDefaults).Where(fields.Has))
        {
            scope.Log.Add(ProblemTable.HoursBesideJobs, fields.PlaceOfKey(key), key);
        }

        var jobs = fields.Maps("jobs", Keys.Job).ToArray();
        if (jobs.Length == 0 && list.Items.Count == 0)
        {
            scope.Log.Add(ProblemTable.NoJobs, list.Place);
        }

        return jobs.Length == 0 ? [Unsaid] : [.. jobs.Select((job, i) => Read(job, fields, i + 1))];
    }

    private Job Read(Fields fields, Fields defaults, int number)
    {
        Fields With(string key) => fields.Has(key) ? fields : defaults;
        var time = Hours(fields);
        return new Job
        {
            Number = number,
            Parts = Parts(With("part"), fields),
            Operations = words.Operations(With("operation"), "operation") is { Count: > 0 } operations ? operations : [new("other")],
            Time = time,
            SetUp = SetUp(fields, time),
            Held = With("held").Text("held"),
            Datum = With("datum").Text("datum"),
            Tools = With("tools").Mentions<Tool>("tools", IdKind.Tool, null),
            Made = [.. fields.Items("made").Select(node => Made(fields, node)).OfType<Id<Tool>>().Distinct()],
            Mends = fields.Mention<Mistake>("mends", IdKind.Mistake, entry.Build),
        };
    }

    private IReadOnlyList<PartShare> Parts(Fields fields, Fields job)
    {
        if (fields["part"] is not { } node)
        {
            if (!parts.IsEmpty)
            {
                scope.Log.Add(ProblemTable.PartNotSaid, job.Place);
            }

            return [];
        }

        if (node.Items is [TextNode { Text: "whole" }])
        {
            return [];
        }

        var shares = node is MapNode map
            ? fields.Pairs(map).Select(pair => Share(fields, pair.Key, pair.Value))
            : node.Items.Select(item => Share(fields, item, weight: null));
        return [.. shares.OfType<PartShare>().DistinctBy(share => share.Part)];
    }

    private PartShare? Share(Fields fields, Node node, Node? weight)
    {
        if (!fields.TryId(node, "part", out var id))
        {
            return null;
        }

        if (parts.Find(id, node.Place, scope.Log) is not { } part)
        {
            return null;
        }

        if (weight is null or { IsBlank: true })
        {
            return new PartShare(part, 1);
        }

        var weights = new Fields(new MapNode(node.Place, [new((TextNode)node, weight)]), scope, id);
        return weights.Number(id, 0.001m, "Write a weight such as `2`; the time is divided in proportion.") is { } share ? new PartShare(part, share) : null;
    }

    private Minutes Hours(Fields fields)
    {
        if (fields.Items("hours").Count == 0)
        {
            scope.Log.Add(ProblemTable.HoursMissing, fields.Place);
            return Minutes.Zero;
        }

        var (time, stretches) = (Minutes.Zero, new List<(Stretch, Place)>());
        foreach (var node in fields.Items("hours"))
        {
            if (node is TextNode text && Stretch.TryParse(text.Text, out var stretch))
            {
                if (stretch.Time == Minutes.Zero)
                {
                    scope.Log.Add(ProblemTable.NotPositive, node.Place, "hours", text.Text);
                    continue;
                }

                stretches.Add((stretch, node.Place));
                time = Within(time + stretch.Time);
            }
            else
            {
                time = Within(time + (fields.DurationOf(node, "hours") ?? Minutes.Zero));
            }
        }

        scope.Clock.Add(new ClockClaim(date, time, stretches, fields["hours"]!.Place));
        return time;
    }

    private Minutes SetUp(Fields fields, Minutes time)
    {
        var setUp = fields["setup"] switch
        {
            null => Minutes.Zero,
            TextNode { Text: "half" } => Part(time, 0.5m),
            TextNode { Text: "most" } => Part(time, 0.75m),
            _ => fields.DurationOrZero("setup"),
        };
        if (setUp <= time)
        {
            return setUp;
        }

        if (time > Minutes.Zero)
        {
            scope.Log.Add(ProblemTable.SetupTooLong, fields["setup"]!.Place, setUp, time);
        }

        return time;
    }

    // A job of more than a day is refused anyhow; a bound keeps a thousand of them within an integer.
    private static Minutes Within(Minutes time) => time > MostOfAJob ? MostOfAJob : time;

    private static Minutes Part(Minutes time, decimal share) => new((int)decimal.Round(time.Count * share, MidpointRounding.AwayFromZero));

    private Id<Tool>? Made(Fields fields, Node node)
    {
        if (node is not MapNode)
        {
            return fields.Mention<Tool>(node, "made", IdKind.Tool, null);
        }

        if (fields.Map(node, Keys.Tool) is not { } definition || new ToolKeyReader(scope).Read(definition, entry) is not { } tool)
        {
            return null;
        }

        toolsDefined.Add(tool);
        return tool.Id;
    }
}
