using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>
/// Holds the ids that files use against those that files define. Tools and lessons count in the whole journal, parts,
/// entries, mistakes and snags in their build.
/// </summary>
internal sealed class Ids
{
    private readonly Dictionary<(IdKind Kind, Id<Build>? Build), Dictionary<string, Place>> known = [];
    private readonly LostIds lost;
    private readonly ProblemLog log;

    /// <summary>Gathers the ids that are defined and reports each that is defined twice.</summary>
    public Ids(IEnumerable<Definition> definitions, LostIds lost, ProblemLog log)
    {
        (this.lost, this.log) = (lost, log);
        foreach (var definition in definitions)
        {
            Define(definition);
        }
    }

    /// <summary>The ids of a kind, in a build where they count within one.</summary>
    public IReadOnlyCollection<string> Known(IdKind kind, Id<Build>? build) => known.TryGetValue((kind, build), out var ids) ? ids.Keys : [];

    /// <summary>Whether an id is defined: in a build, or in the journal where the kind of id belongs to no build.</summary>
    public bool Has(IdKind kind, Id<Build>? build, string id) => known.TryGetValue((kind, build), out var ids) && ids.ContainsKey(id);

    /// <summary>Reports every id used that nothing defines, with the nearest that is.</summary>
    public void Check(IEnumerable<Mention> mentions)
    {
        foreach (var mention in mentions.Where(mention => !lost.Has(mention.Kind, mention.Build, mention.Id)))
        {
            Check(mention);
        }
    }

    private void Define(Definition definition)
    {
        if (!known.TryGetValue((definition.Kind, definition.Build), out var ids))
        {
            known.Add((definition.Kind, definition.Build), ids = new(StringComparer.Ordinal));
        }

        if (!ids.TryAdd(definition.Id, definition.Place))
        {
            var first = ids[definition.Id];
            log.Add(ProblemTable.DuplicateId, definition.Place, definition.Kind.ToWord(), definition.Id, first.File, first.Line);
        }
    }

    private void Check(Mention mention)
    {
        switch (mention.Kind)
        {
            case IdKind.PartOrTool when !Has(IdKind.Part, mention.Build, mention.Id) && !Has(IdKind.Tool, null, mention.Id):
                Report(ProblemTable.UnknownTarget, mention, [.. Known(IdKind.Part, mention.Build), .. Known(IdKind.Tool, null)], "parts and tools");
                break;
            case IdKind.Tool when !Has(mention.Kind, null, mention.Id):
                Report(ProblemTable.UnknownTool, mention, Known(IdKind.Tool, null), "tools");
                break;
            case IdKind.Lesson when !Has(mention.Kind, null, mention.Id):
                Report(ProblemTable.UnknownLesson, mention, Known(IdKind.Lesson, null), "lessons");
                break;
            case IdKind.Mistake when !Has(mention.Kind, mention.Build, mention.Id):
                Report(ProblemTable.UnknownMistake, mention, Known(IdKind.Mistake, mention.Build), "mistakes with an id");
                break;
            case IdKind.Snag when !Has(mention.Kind, mention.Build, mention.Id):
                Report(ProblemTable.UnknownSnag, mention, Known(IdKind.Snag, mention.Build), "snags");
                break;
            case IdKind.Entry when !Has(mention.Kind, mention.Build, mention.Id):
                Report(ProblemTable.UnknownEntry, mention, Known(IdKind.Entry, mention.Build), "entries");
                break;
            case IdKind.Part when mention.Build is null && mention.Id.Split('/') is [var build, var part] && !Has(IdKind.Part, new Id<Build>(build), part) && !lost.Has(IdKind.Part, new Id<Build>(build), part):
                var all = known.Where(pair => pair.Key is { Kind: IdKind.Part, Build: not null }).SelectMany(pair => pair.Value.Keys.Select(id => $"{pair.Key.Build}/{id}"));
                Report(ProblemTable.UnknownPartOf, mention, [.. all], "parts");
                break;
            default:
                break;
        }
    }

    private void Report(ProblemKind kind, Mention mention, IReadOnlyCollection<string> choice, string whatTheyAre) =>
        log.AddUnknown(kind, mention.Place, mention.Id, choice, whatTheyAre);
}
