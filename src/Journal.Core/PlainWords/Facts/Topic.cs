using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What is spoken of: the parts that “it” and a bare “the bore” stand for at each clause.</summary>
internal sealed class Topic(Account account)
{
    /// <summary>Words before a bare last word that make it a thing of another name: “push rod”, “drill rod”.</summary>
    private static readonly HashSet<string> OfAnother = ["push", "pull", "tie", "drill", "lead", "feed", "dip", "stud", "brass", "steel", "welding", "threaded", "test", "control", "brake", "copper", "silver", "draw", "stop", "end", "wall", "junk", "bottle", "milk"];

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

            // "bored the middle for the hot cap spigot": what the work is for is not spoken of.
            if (clause.Operations.Count > 0 && IsPurpose(name))
            {
                continue;
            }

            var counts = clause.IsTonight || (!clause.IsOthers && parts.Count == 0);
            if (counts && !IsAside(clause, name) && Resolve(name) is { Count: > 0 } ids)
            {
                Set(ids);
                heardAt = clause.Index;
            }
        }
    }

    /// <summary>Whether a part is only what something is for: “for the hot cap”.</summary>
    public bool IsPurpose(NameMention name) => account.Word(name.First - 1) == "for" || (account.Word(name.First - 1) is "the" or "a" or "its" or "my" && account.Word(name.First - 2) == "for");

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

        // "the rods" are those spoken of, where some of them are.
        if (name.IsPlural)
        {
            var spoken = name.Name.Ids.Where(parts.Contains).ToList();
            var several = name.Name.Ids.Where(id => account.Build.Parts.Any(part => part.Id.Value == id && part.Quantity > 1)).ToList();
            return spoken.Count == 1 && several.Contains(spoken[0]) ? spoken : several.Count == 1 && spoken.Count <= 1 && several.Count < name.Name.Ids.Count - 1 ? several : name.Name.Ids;
        }

        // "the top cover" is the one with "top" in its title.
        var which = account.Word(name.First - 1);
        var titled = name.Name.Ids.Where(id => account.Build.Parts.Any(part => part.Id.Value == id && $" {part.Title.Replace(',', ' ')} {id.Replace('-', ' ')} ".Contains($" {which} ", StringComparison.OrdinalIgnoreCase))).ToList();
        if (name.Name.IsShort && titled.Count == 1 && which.Length > 2)
        {
            return titled;
        }

        // The one spoken of last; else the one that was at least named: "before the connecting rod I … Then the rod itself".
        var last = name.Name.Ids.Where(mentioned.ContainsKey).OrderByDescending(id => mentioned[id]).FirstOrDefault() ?? name.Name.Ids.Where(named.ContainsKey).OrderByDescending(id => named[id]).FirstOrDefault();
        return last is null ? [] : [last];
    }

    /// <summary>Whether a part is only named to place another, is somebody else's, or is said not to be meant.</summary>
    public bool IsAside(Clause clause, NameMention name)
    {
        // "the ring grooves" of a piston are not its rings.
        if (name.Name.IsShort && parts.Count > 0 && name.Next < clause.Next && !name.Name.Ids.Any(parts.Contains) && account.HasCueAt(name.Next, Words.Cue.FeatureMeasured))
        {
            return true;
        }

        // "the cap for it" is of what was spoken of; "push rod" is no con rod.
        if (name.Name.IsShort && ((account.Word(name.Next) == "for" && account.Word(name.Next + 1) is "it" or "this" or "that") || OfAnother.Contains(account.Word(name.First - 1))))
        {
            return true;
        }

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

            if ((word == "of" && account.Word(at - 1) == "out") || word is "not" or "from" or "off" or "against" or "than" or "like" or "near" or "beside" || (word == "to" && account.Word(at - 1) is not ("back" or "on" or "over" or "went" or "got" or "come" or "moved" or "next" or "turned" or "down" or "used" or "did" or "happened" or "then" or "so" or "and" or "")))
            {
                return true;
            }

            var at2 = at;
            return clause.Hits.Exists(hit => hit.Cue == Cue.ExcludeObject && hit.Next > at2 && hit.First >= at2 - 2 && hit.Next <= name.First);
        }

        return clause.HasBefore(Cue.Negation, name.First) || clause.Hits.Exists(hit => hit.Cue == Cue.Negation && hit.First == name.Next);
    }
}
