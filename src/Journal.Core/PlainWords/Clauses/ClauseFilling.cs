namespace Journal.Core.PlainWords.Clauses;

/// <summary>Gives each clause what stands in it. It goes along the account once, clause by clause.</summary>
internal sealed class ClauseFilling(Account account)
{
    private int operationAt;
    private int quantityAt;

    public void Fill(Clause clause)
    {
        for (var at = clause.First; at < clause.Next; at++)
        {
            foreach (var hit in account.CuesAt(at))
            {
                if (hit.Next <= clause.Next)
                {
                    clause.Add(hit);
                }
            }

            if (account.NameOf[at] is { } name && name.First == at)
            {
                clause.Names.Add(name);
            }
        }

        for (; operationAt < account.Operations.Count && account.Operations[operationAt].First < clause.Next; operationAt++)
        {
            clause.Operations.Add(account.Operations[operationAt]);
        }

        for (; quantityAt < account.Quantities.Count && account.Quantities[quantityAt].First < clause.Next; quantityAt++)
        {
            clause.Quantities.Add(account.Quantities[quantityAt]);
        }
    }
}
