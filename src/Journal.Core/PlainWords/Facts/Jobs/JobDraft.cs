using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>A job while the account is being read.</summary>
internal sealed class JobDraft
{
    public List<string> Parts { get; } = [];

    public List<Id<Operation>> Operations { get; } = [];

    public int? Minutes { get; set; }

    public int? SetUp { get; set; }

    public string? Held { get; set; }

    public string? Datum { get; set; }

    public List<string> Tools { get; } = [];

    public Id<Mistake>? Mends { get; set; }

    public List<Span> Words { get; } = [];

    /// <summary>The number of the clause that told of it last.</summary>
    public int Clause { get; private set; } = -1;

    /// <summary>The sentence of that clause.</summary>
    public int Sentence { get; private set; } = -1;

    /// <summary>All clauses that told of it.</summary>
    public List<int> Clauses { get; } = [];

    /// <summary>Whether a verb told that it was done, and not only a noun that names the work.</summary>
    public bool IsFirm { get; set; }

    /// <summary>Whether it took what was left of the evening: “the rest was drilling”.</summary>
    public bool IsRest { get; set; }

    /// <summary>The time that was said of which it took half: “half of that drilling”; 0 where none was.</summary>
    public int HalfOf { get; set; }

    /// <summary>Takes note that a clause told of it.</summary>
    public void Told(Clause clause)
    {
        (Clause, Sentence) = (clause.Index, clause.Sentence);
        if (Clauses.Count == 0 || Clauses[^1] != clause.Index)
        {
            Clauses.Add(clause.Index);
        }
    }

    /// <summary>Whether its part was named with it, and not only gathered from what was spoken of.</summary>
    public bool HasNamedPart { get; set; }

    public void AddOperation(Id<Operation> operation)
    {
        if (!Operations.Contains(operation))
        {
            Operations.Add(operation);
        }
    }

    public void AddTool(string tool)
    {
        if (!Tools.Contains(tool))
        {
            Tools.Add(tool);
        }
    }

    public void AddWords(Span words)
    {
        if (!Words.Contains(words))
        {
            Words.Add(words);
        }
    }
}
