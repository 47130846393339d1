using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>A piece of a sentence with one verb mostly, and what hints at whose work it tells of, and when.</summary>
internal sealed class Clause
{
    private UInt128 cues;

    /// <summary>Its place among the clauses.</summary>
    public int Index { get; set; }

    public required int First { get; init; }

    public required int Next { get; init; }

    /// <summary>The number of its sentence.</summary>
    public required int Sentence { get; init; }

    /// <summary>The paragraph of its sentence.</summary>
    public int Paragraph { get; init; }

    public List<CueHit> Hits { get; } = [];

    public List<OperationHit> Operations { get; } = [];

    public List<NameMention> Names { get; } = [];

    public List<Quantity> Quantities { get; } = [];

    /// <summary>Told of an earlier day.</summary>
    public bool IsPast { get; set; }

    /// <summary>Told of a day to come.</summary>
    public bool IsFuture { get; set; }

    /// <summary>Told of somebody else's work.</summary>
    public bool IsOthers { get; set; }

    /// <summary>Told of a film.</summary>
    public bool IsFilm { get; set; }

    /// <summary>Asked, not told.</summary>
    public bool IsQuestion { get; set; }

    /// <summary>Goes on with what should or could have been.</summary>
    public bool IsSupposed { get; set; }

    /// <summary>Taken back by the words behind it.</summary>
    public bool IsTakenBack { get; set; }

    /// <summary>Whether nothing but time, person or place speaks against tonight's work by the maker.</summary>
    public bool IsTonight => !IsPast && !IsFuture && !IsOthers && !IsQuestion && !IsTakenBack && !IsSupposed;

    public IEnumerable<NameMention> Parts => Names.Where(name => name.IsPart);

    public IEnumerable<NameMention> Tools => Names.Where(name => !name.IsPart);

    public void Add(CueHit hit)
    {
        Hits.Add(hit);
        cues |= UInt128.One << (int)hit.Cue;
    }

    public bool Has(Cue cue) => (cues & (UInt128.One << (int)cue)) != 0;

    public bool HasAny(params ReadOnlySpan<Cue> any)
    {
        foreach (var cue in any)
        {
            if (Has(cue))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The first hint of a kind; null where there is none.</summary>
    public CueHit? FirstOf(Cue cue)
    {
        if (Has(cue))
        {
            foreach (var hit in Hits)
            {
                if (hit.Cue == cue)
                {
                    return hit;
                }
            }
        }

        return null;
    }

    public bool HasBefore(Cue cue, int at) => FirstOf(cue) is { } hit && hit.First < at;

    /// <summary>Whether what stands at a token was really done: not denied, wished, planned or supposed before it.</summary>
    public bool IsReal(int at)
    {
        if (!IsTonight)
        {
            return false;
        }

        foreach (var hit in Hits)
        {
            if (hit.First >= at)
            {
                break;
            }

            if (hit.Cue is Cue.Negation or Cue.Unreal or Cue.Future && !IsLifted(hit, at))
            {
                return false;
            }
        }

        return true;
    }

    // "had to", "managed to", "so I could": done after all; "not only".
    private bool IsLifted(CueHit before, int at) =>
        Hits.Exists(hit => hit.Cue == Cue.Done && hit.First >= before.First && hit.Next <= at && before.Cue != Cue.Negation);

    public override string ToString() => $"{First}-{Next} {(IsPast ? "past " : "")}{(IsFuture ? "future " : "")}{(IsOthers ? "others " : "")}";
}
