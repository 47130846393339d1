using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;

namespace Journal.Cli.Tables;

/// <summary>What must go back to whom, for people.</summary>
internal static class DueList
{
    /// <summary>A line for each tool; nothing where none is due.</summary>
    public static void Print(IReadOnlyList<DueTool> due, Printout print)
    {
        foreach (var (i, one) in due.Index())
        {
            var from = one.Tool.BorrowedFrom is { } owner ? $", from {owner}" : "";
            print.Hang(i == 0 ? "Give back " : "          ", $"{one.Tool.Title}{from}: due {Written.Date(one.Tool.Due)}, {When(one.Days)}");
        }
    }

    private static string When(int days) => days switch
    {
        0 => "today",
        1 => "tomorrow",
        > 1 => $"in {days} days",
        -1 => "a day ago",
        _ => $"{-days} days ago",
    };
}
