using Journal.Core.PlainWords.Clauses;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads tools, jigs and fixtures made.</summary>
internal sealed class MadeReader(Account account)
{
    private readonly List<ProposedTool> made = [];

    public IReadOnlyList<ProposedTool> Made => made;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (clause.IsTonight && MadeThings.In(account, clause) is { } thing)
        {
            made.Add(new(thing.Title, thing.Kind, account.SpanOf(clause.First, clause.Next)));
        }
    }
}
