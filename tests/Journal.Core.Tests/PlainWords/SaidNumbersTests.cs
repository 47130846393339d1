using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;

namespace Journal.Core.Tests.PlainWords;

/// <summary>
/// No number that was not said: each number of a proposal is one that the account gives, or what two of them give together (a sum, a
/// difference, a half), or three where setting up or a rest stands beside.
/// </summary>
public sealed class SaidNumbersTests
{
    [Fact]
    public void EveryNumber_OfEveryAccount_WasSaid()
    {
        foreach (var maker in Directory.EnumerateDirectories(Path.Combine(Demo.Root(), "tests", "Journal.Core.Tests", "PlainWords", "Accounts")))
        {
            var journal = JournalReader.Read(Path.Combine(maker, "journal"), DateOnly.MaxValue).Journal!;
            foreach (var file in Directory.EnumerateFiles(maker, "*.json", SearchOption.AllDirectories))
            {
                var account = ExpectedAccount.Load(file);
                var build = journal.Builds.Single(build => build.Id.Value == account.Build);
                AssertSaid(account.Said, build, AccountReader.Read(account.Said, journal, build, account.Date), file);
            }
        }
    }

    internal static void AssertSaid(string text, Build build, Proposal proposal, string where)
    {
        var said = Said(text, build.Units);
        Assert.All(Numbers(proposal), number => Assert.True(IsSaid(number, said), $"{where}: {number} was not said."));
    }

    private static IEnumerable<decimal> Numbers(Proposal proposal)
    {
        foreach (var job in proposal.Jobs)
        {
            foreach (var minutes in new[] { job.Time, job.SetUp }.Where(minutes => minutes is not null))
            {
                yield return minutes!.Value.Count;
            }
        }

        var times = proposal.Mistakes.Select(one => one.Lost).Concat(proposal.Trials.Select(one => one.Time)).Append(proposal.Total);
        var others = proposal.Readings.Select(one => one.Actual.Value).Concat(proposal.Bought.Where(one => one.Cost is not null).Select(one => one.Cost!.Value))
            .Concat(proposal.Settings.Where(one => one.Rpm is not null).Select(one => one.Rpm!.Value)).Concat(proposal.Settings.Where(one => one.Depth is not null).Select(one => one.Depth!.Value.Value));
        foreach (var number in times.Where(time => time is not null).Select(time => (decimal)time!.Value.Count).Concat(others))
        {
            yield return number;
        }
    }

    /// <summary>All numbers that begin at any word, each in every reading that the grammar of numbers and quantities has for it.</summary>
    private static HashSet<decimal> Said(string text, LengthUnit units)
    {
        var said = new HashSet<decimal>();
        var tokens = Tokenizer.Tokens(text);
        var grammar = new QuantityGrammar(tokens, units, HalfHour.Past);
        for (var at = 0; at < tokens.Count; at++)
        {
            if (grammar.At(at) is { } quantity)
            {
                said.Add(Plain(quantity.Value));
                said.Add(quantity.Minutes);
            }

            if (NumberGrammar.TryNumber(tokens, at, out var number))
            {
                // Spoken thousandths, pence, hundredths, and hours that go without saying.
                foreach (var worth in new[] { 1m, 60m, 0.1m, 0.01m, 0.001m, 0.0001m, 100m })
                {
                    said.Add(Plain(number.Value * worth));
                }
            }

            AddFigures(tokens, at, said);
        }

        return said;
    }

    // "seven four nine seven": figures one by one.
    private static void AddFigures(List<Token> tokens, int at, HashSet<decimal> said)
    {
        var value = 0m;
        for (var next = at; next < Math.Min(tokens.Count, at + 6) && Figure(tokens[next].Text) is >= 0 and var figure; next++)
        {
            value = value * 10 + figure;
            said.Add(Plain(value / 1000));
            said.Add(Plain(value / 10_000));
        }
    }

    private static int Figure(string word) => Array.IndexOf(["oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"], word is "o" or "zero" or "nought" ? "oh" : word);

    private static bool IsSaid(decimal number, HashSet<decimal> said)
    {
        var wanted = Plain(number);
        return said.Contains(wanted) || said.Contains(wanted * 2) || said.Any(one => said.Contains(Plain(wanted - one)) || said.Contains(Plain(wanted + one)))
            || said.Any(one => said.Any(other => said.Contains(Plain(wanted + one + other)) || said.Contains(Plain(wanted + one - other))));
    }

    private static decimal Plain(decimal value) => decimal.Round(value, 6) / 1.000000000000000000m;
}
