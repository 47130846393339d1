using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>
/// The parts that a build's files can name. Where the parts list itself could not be read, nobody knows what is on it,
/// and none is reported as unknown.
/// </summary>
internal sealed class PartsList
{
    private readonly string[] ids;
    private readonly HashSet<string> known;
    private readonly bool isLost;

    private PartsList(IEnumerable<Part> parts, bool isLost)
    {
        ids = [.. parts.Select(part => part.Id.Value)];
        known = new HashSet<string>(ids, StringComparer.Ordinal);
        this.isLost = isLost;
    }

    /// <summary>The list of a build whose file could not be read.</summary>
    public static PartsList Lost { get; } = new([], isLost: true);

    /// <summary>Whether the build has no parts list.</summary>
    public bool IsEmpty => ids.Length == 0;

    /// <summary>The parts of a list that could be read.</summary>
    public static PartsList Of(IEnumerable<Part> parts) => new(parts, isLost: false);

    /// <summary>Whether the list has a part; always true where it could not be read, so that nothing is reported for it.</summary>
    public bool Has(string id) => isLost || known.Contains(id);

    /// <summary>The part with an id; null, with a problem that names the nearest, where the list has none.</summary>
    public Id<Part>? Find(string id, Place place, ProblemLog log)
    {
        if (Has(id))
        {
            return new Id<Part>(id);
        }

        log.AddUnknown(ProblemTable.UnknownPart, place, id, ids, "parts");
        return null;
    }
}
