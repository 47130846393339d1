using Journal.Core.Model;

namespace Journal.Core.PlainWords.Facts;

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
    public int Clause { get; set; }

    public int Sentence { get; set; }

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
