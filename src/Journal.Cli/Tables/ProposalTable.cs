using System.Globalization;
using Journal.Cli.Output;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Told;

namespace Journal.Cli.Tables;

/// <summary>A proposal for people: each key with the words that it came from.</summary>
internal static class ProposalTable
{
    /// <summary>The proposal with its questions.</summary>
    public static void Print(Proposal proposal, string account, Printout print)
    {
        var items = ProposalItem.Of(proposal);
        if (items.Count == 0)
        {
            print.Say("Nothing in it is sure enough to propose.");
        }

        foreach (var item in items)
        {
            Print(item, "", account, print);
        }

        foreach (var question in proposal.Questions)
        {
            print.Hang("?         ", $"{question.Text} “{Quote.Of(account, question.Words)}”");
        }
    }

    /// <summary>Things of a proposal with numbers before them, from 1.</summary>
    public static void PrintNumbered(IReadOnlyList<ProposalItem> items, string account, Printout print)
    {
        foreach (var (i, item) in items.Index())
        {
            Print(item, (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(2) + " ", account, print);
        }
    }

    private static void Print(ProposalItem item, string number, string account, Printout print)
    {
        print.Hang($"{number}{item.Key,-10}", item.Value);
        foreach (var span in item.Words.Where(span => span.End > span.Start))
        {
            print.Hang($"{new string(' ', number.Length)}            “", $"{Quote.Of(account, span)}”", Ink.Faint);
        }
    }
}
