using Journal.Core.Checking;
using Journal.Core.PlainWords;
using Xunit.Abstractions;

namespace Journal.Core.Tests.PlainWords;

/// <summary>
/// Accounts of evenings with the facts that a careful reader takes from them, written by hands that had not seen the code. With
/// JOURNAL_ACCOUNTS set to folders (parted by colons), each with a <c>journal</c> beside them, those are scored and the table is printed;
/// with JOURNAL_ACCOUNTS_NOTES set, every miss is too.
/// </summary>
public sealed class AccountTests(ITestOutputHelper output)
{
    private const double LeastPrecision = 0.85;
    private const double LeastRecall = 0.75;

    [Fact]
    public void Accounts_OfFoldersAskedFor_AreScored()
    {
        var folders = (Environment.GetEnvironmentVariable("JOURNAL_ACCOUNTS") ?? "").Split(':', StringSplitOptions.RemoveEmptyEntries);
        var scoring = new Scoring();
        foreach (var folder in folders)
        {
            Score(folder, scoring);
        }

        Print(scoring);
    }

    /// <summary>
    /// The accounts beside this file, as the program is now; the bounds keep it from reading worse. Whoever changes a rule moves them up, not down.
    /// </summary>
    [Fact]
    public void Accounts_BesideTheTests_AreReadWithFewSlips()
    {
        var scoring = new Scoring();
        foreach (var maker in Directory.EnumerateDirectories(Path.Combine(Demo.Root(), "tests", "Journal.Core.Tests", "PlainWords", "Accounts")).Order(StringComparer.Ordinal))
        {
            foreach (var half in new[] { "open", "held" }.Select(half => Path.Combine(maker, half)).Where(Directory.Exists))
            {
                Score(half, scoring);
            }
        }

        Print(scoring);
        Assert.True(scoring.Overall.Precision >= LeastPrecision && scoring.Overall.Recall >= LeastRecall, $"Precision {scoring.Overall.Precision:0.000}, recall {scoring.Overall.Recall:0.000}.");
    }

    internal static void Score(string folder, Scoring scoring)
    {
        var journal = JournalReader.Read(Path.Combine(folder, "..", "journal"), DateOnly.MaxValue).Journal!;
        foreach (var file in Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal))
        {
            var account = ExpectedAccount.Load(file);
            var build = journal.Builds.Single(build => build.Id.Value == account.Build);
            var proposal = AccountReader.Read(account.Said, journal, build, account.Date);
            scoring.Add(account, ProposalFacts.Of(proposal, account.Said));
        }
    }

    private void Print(Scoring scoring)
    {
        var notes = Environment.GetEnvironmentVariable("JOURNAL_ACCOUNTS_NOTES");
        string[] lines = [.. notes is null ? [] : scoring.Notes, .. scoring.Table()];
        foreach (var line in lines)
        {
            output.WriteLine(line);
        }

        if (notes is { Length: > 1 })
        {
            File.WriteAllLines(notes, lines);
        }
    }
}
