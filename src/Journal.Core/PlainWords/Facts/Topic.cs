using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What is spoken of: the parts that “it” and a bare “the bore” stand for at each clause.</summary>
internal sealed class Topic(Account account)
{
    private readonly Dictionary<string, int> mentioned = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> named = new(StringComparer.Ordinal);
    private List<string> parts = [];
    private int clock;
    private int heardAt = -10;

    /// <summary>The parts spoken of last; empty before any was named.</summary>
    public IReadOnlyList<string> Parts => parts;

    /// <summary>Whether the topic was named at a clause or right before it.</summary>
    public bool IsFresh(int clause) => clause - heardAt <= 2;

    /// <summary>Takes note of what a clause speaks of.</summary>
    public void Hear(Clause clause)
    {
        foreach (var name in clause.Parts)
        {
            if (name.Name.Ids is [var only])
            {
                named[only] = clause.Index;
            }

            var counts = clause.IsTonight || (!clause.IsOthers && parts.Count == 0);
            if (counts && !IsAside(clause, name) && Resolve(name) is { Count: > 0 } ids)
            {
                Set(ids);
                heardAt = clause.Index;
            }
        }
    }

    public void Set(IReadOnlyList<string> ids)
    {
        parts = [.. ids];
        clock++;
        foreach (var id in ids)
        {
            mentioned[id] = clock;
        }
    }

    /// <summary>The parts that a name stands for here; empty where it could be one of several.</summary>
    public IReadOnlyList<string> Resolve(NameMention name)
    {
        if (name.Name.Ids.Count == 1)
        {
            return name.Name.Ids;
        }

        if (name.IsPlural)
        {
            return name.Name.Ids;
        }

        // The one spoken of last; else the one that was at least named: "before the connecting rod I … Then the rod itself".
        var last = name.Name.Ids.Where(mentioned.ContainsKey).OrderByDescending(id => mentioned[id]).FirstOrDefault() ?? name.Name.Ids.Where(named.ContainsKey).OrderByDescending(id => named[id]).FirstOrDefault();
        return last is null ? [] : [last];
    }

    /// <summary>Whether a part is only named to place another, is somebody else's, or is said not to be meant.</summary>
    public bool IsAside(Clause clause, NameMention name)
    {
        for (var at = name.First - 1; at >= clause.First && at >= name.First - 3; at--)
        {
            var word = account.Word(at);
            if (account.HasCueAt(at, Cue.Theirs) && word is not ("her" or "your"))
            {
                return true;
            }

            if (word is "the" or "a" or "my" or "that" or "this" or "both" or "all" or "two" or "its" or "old" or "new" or "other" or "same")
            {
                continue;
            }

            if (word is "not" or "from" or "off" or "against" or "than" or "like" or "near" or "beside")
            {
                return true;
            }

            var at2 = at;
            return clause.Hits.Exists(hit => hit.Cue == Cue.ExcludeObject && hit.Next > at2 && hit.First >= at2 - 2 && hit.Next <= name.First);
        }

        return clause.HasBefore(Cue.Negation, name.First) || clause.Hits.Exists(hit => hit.Cue == Cue.Negation && hit.First == name.Next);
    }
}
