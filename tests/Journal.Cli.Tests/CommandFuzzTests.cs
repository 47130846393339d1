using System.Globalization;
using Journal.Tests.Shared;

namespace Journal.Cli.Tests;

/// <summary>
/// Every command asked of broken journals: each answers, with a status of its own, and none falls through to the last net.
/// <c>JOURNAL_FUZZ_COMMANDS=10000</c> asks of more journals, <c>JOURNAL_FUZZ_SEED</c> of others.
/// </summary>
public class CommandFuzzTests
{
    private static readonly string[] Readings =
    [
        "check", "hours", "timeline", "lessons", "lessons --for boring --material cast-iron", "tooling", "costs", "readings", "settings", "next",
        "estimate bench-shaper", "estimate drill", "stint show", "hours --format csv", "lessons --format json", "next --format json", "propose", "propose - --format json", "estimate bench-shaper --format json",
        "hours --by-evening", "hours --part head --since 2025-09-07 --format csv", "timeline --part head", "tooling --part quill", "costs --build drill", "find boss", "find --part head --format json",
        "show", "show 2025-09-06 --format json", "words causes", "order", "order bench-shaper --format json", "rename part head top-slide --dry-run", "rename lesson lap-last lap --dry-run",
    ];

    // Each on a journal of its own making: what one writes, the next reads.
    private static readonly string[] Writings =
    [
        "jot It_sings.", "stint begin --part head --operation boring", "stint end", "write --part head --operation boring --hours 1h", "write --from evening.txt --yes", "add part cap --title Cap",
        "add tool plug --kind fixture", "add build fan", "begin bench-shaper", "gather . --dry-run",
        "amend --lesson Oil_it", "rename part head top-slide", "split part quill quill cap", "merge tool boring-head lathe", "rename build drill bench-drill", "check",
    ];

    [Fact]
    public void EachCommand_MutatedJournals_AnswersAndNeverFallsThrough()
    {
        var count = Number("JOURNAL_FUZZ_COMMANDS", 30);
        var random = new Random(Number("JOURNAL_FUZZ_SEED", 20251003));
        for (var i = 0; i < count; i++)
        {
            using var journal = JournalOnDisk.Small().With("evening.txt", "Bored the head for an hour, lathe at 320 rpm; the bore came out at 25.02 mm. Quill is finished. Lesson: oil it first.\n");
            var files = Directory.GetFiles(journal.Folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
            var broken = files[random.Next(files.Count)];
            var bytes = Mutations.Of(File.ReadAllText(broken), random);
            File.WriteAllBytes(broken, bytes);
            foreach (var command in Readings.Concat(Writings))
            {
                var answer = journal.Ask(command.Split(' '));

                Assert.True(
                    answer.Status is 0 or 1 or 2 && !answer.Error.Contains("fault in this program", StringComparison.Ordinal),
                    $"journal {i}, `{command}`: status {answer.Status}, {answer.Error}\n{Path.GetRelativePath(journal.Folder, broken)}: {Convert.ToBase64String(bytes)}");
            }
        }

        Tries.Add("commands", count * (Readings.Length + Writings.Length));
    }

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
}
