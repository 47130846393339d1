using Journal.Cli.Output;

namespace Journal.Cli.Tests;

public class TableTests
{
    public static TheoryData<string> Commands => ["check", "hours", "timeline", "lessons", "tooling", "costs", "next"];

    [Fact]
    public void Hours_SmallJournal_LeadsWithASentenceAndTotals()
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask("hours");

        Assert.Equal("10h over 3 evenings; a tenth of it spent setting up.", answer.Lines[0]);
        Assert.Contains("Head casting           7h52   79 %  boring 6h45, fitting 1h07", answer.Lines);
        Assert.Contains("Total                   10h", answer.Lines);
        Assert.Contains("No hours yet on: Gib screw.", answer.Lines);
    }

    // On the narrowest terminal too: a word in two halves is found by nobody.
    [Theory]
    [InlineData("hours")]
    [InlineData("lessons")]
    [InlineData("tooling")]
    [InlineData("costs")]
    [InlineData("timeline")]
    [InlineData("readings")]
    [InlineData("settings")]
    public void Table_NarrowTerminal_BreaksNoWord(string command)
    {
        using var journal = JournalOnDisk.Small()
            .With("tools.yaml", "- {id: lathe, title: Screwcutting lathe with quick-change gearbox, kind: machine, got: had}\n- {id: boring-head, title: Boring head, kind: tool-holding, got: bought, cost: 85}\n")
            .With("drill/2025-10-01-more.md", "---\npart: head\noperation: [counterboring, centre-drilling]\nhours: 1h\nreadings: {feature: counterbore-diameter, required: 12 H7, actual: 12.008}\nsettings: {diameter: 30 mm, rpm: 480, feed: 0.1 mm/rev, depth: 0.5 mm, verdict: worked wonderfully, cutter: carbide-tipped}\n---\n");
        string[] Words(int width) => [.. Answer.To(journal.Folder, terminal => terminal with { Width = width }, command).Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Where(word => word.Length > 3 && !word.Contains('─', StringComparison.Ordinal))];

        Assert.Subset(Words(100).ToHashSet(), Words(40).ToHashSet());
    }

    [Fact]
    public void Settings_ShowTheDepthOfCut()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-more.md", "---\npart: head\noperation: turning\nhours: 1h\nsettings: {diameter: 30 mm, rpm: 480, feed: 0.1 mm/rev, depth: 0.5 mm, verdict: worked}\n---\n");

        Assert.Contains(journal.Ask("settings").Lines, line => line.Contains("Depth", StringComparison.Ordinal));
        Assert.Contains(journal.Ask("settings").Lines, line => line.Contains("0.5 mm  ", StringComparison.Ordinal));
    }

    [Fact]
    public void Readings_OneSidedTolerance_SayWhatTheShareCountsFrom()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-more.md", "---\npart: head\noperation: turning\nhours: 1h\nreadings: {feature: bore, required: 38 +0.05/0, actual: 38.03}\n---\n");

        var words = string.Join(' ', journal.Ask("readings").Lines.Select(line => line.Trim()));

        Assert.Contains("20 %", words, StringComparison.Ordinal);
        Assert.Contains("counted from the middle of the limits", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Lessons_SharesOfCauses_AddUp()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-more.md", "---\npart: head\noperation: turning\nhours: 5h\nmistakes:\n  - {what: A., cause: haste, lost: 1h15}\n  - {what: B., cause: chatter, lost: 1h15}\n---\n");

        Assert.Equal(["34 % 34 %", "33 % 67 %", "33 % 100 %"], journal.Ask("lessons").Lines.Select(line => line.Trim()).Where(line => line.Contains(" %", StringComparison.Ordinal) && line.Contains("1h15", StringComparison.Ordinal)).Select(line => string.Join(' ', line[line.IndexOf("1h15", StringComparison.Ordinal)..][4..].Split(' ', StringSplitOptions.RemoveEmptyEntries))));
    }

    [Fact]
    public void Next_SmallJournal_ReadsLikeANote()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal(
            """
            Bench drill
            Last at the bench 2025-09-30: The head again.

            Next      Face the back of the boss.
            Held      face plate, packed on three jacks
            Datum     machined base
            Snags     It still sings at 300 rpm. (2025-09-30)
            To go     Head casting; Gib screw (4 of 4)

            Before more boring on: Head casting
            – Indicate a rough casting at both ends, and average. (1h15 lost)

            """,
            journal.Ask("next").Out);
    }

    [Fact]
    public void Next_LastPartFinished_SaysHowToFinishTheBuild()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-last.md", "---\npart: head\noperation: boring\nhours: 1h\nfinished: [head, {gib-screw: 4}]\n---\n");

        var words = string.Join(' ', journal.Ask("next").Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.EndsWith("To go None: every part on the list is finished. If the build is finished too, put `status: finished` in drill/build.yaml.", words.Split(" Before more")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Next_NoPartsList_DoesNotSayThatAllIsFinished()
    {
        using var journal = JournalOnDisk.Empty()
            .With("lamp/build.yaml", "title: Bench lamp\n")
            .With("lamp/2025-10-01-arm.md", "---\noperation: turning\nhours: 1h\n---\n");

        Assert.Contains("To go     The build has no parts list.", journal.Ask("next").Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void EmptyJournal_EachCommand_IsOneKindSentence(string command)
    {
        using var journal = JournalOnDisk.Empty();

        var answer = journal.Ask(command);

        Assert.Equal(0, answer.Status);
        Assert.InRange(answer.Lines.Count, 1, 2);
        Assert.EndsWith(".", answer.Out.TrimEnd(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void LongTexts_EachCommand_FitEightyColumnsWithoutTrailingSpaces(string command)
    {
        var words = string.Join(' ', Enumerable.Repeat("reference surface", 30));
        using var journal = JournalOnDisk.Small()
            .With("drill/2025-10-01-long.md", $"---\ntitle: {words}\npart: head\noperation: boring\nhours: 1h\nnext: {words}\nmilestone: {words}\nsnags: {words}\nlessons: {words}\ntools: {new string('t', 30)}-{new string('u', 30)}\n---\n");

        Assert.All(journal.Ask(command).Lines, line =>
        {
            Assert.True(line.Length <= 80, line);
            Assert.Equal(line.TrimEnd(), line);
        });
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Colour_WithAndWithout_SaysTheSame(string command)
    {
        using var journal = JournalOnDisk.Small();

        var plain = journal.Ask(command).Out;
        var coloured = Answer.To(journal.Folder, terminal => terminal with { IsTerminal = true, HasColour = true }, command).Out;

        Assert.DoesNotContain('\e', plain);
        Assert.Equal(Squeezed(plain), Squeezed(System.Text.RegularExpressions.Regex.Replace(coloured, "\e\\[[0-9;]*m", "")));
    }

    [Fact]
    public void ControlCharactersInNotes_NeverReachTheTerminal()
    {
        using var journal = JournalOnDisk.Small()
            .With("drill/2025-10-01-sly.md", "---\npart: head\noperation: boring\nhours: 1h\nnext: \"clear \\e[2J the screen\"\nmilestone: \"red \\e[31m\"\n---\n");

        Assert.Contains("clear [2J the screen", journal.Ask("next").Out, StringComparison.Ordinal);
        Assert.DoesNotContain('\e', journal.Ask("next").Out + journal.Ask("timeline").Out + journal.Ask("check").Out);
    }

    [Theory]
    [InlineData(true, null, "xterm", true)]
    [InlineData(true, "", "xterm", true)]
    [InlineData(true, "1", "xterm", false)]
    [InlineData(true, null, "dumb", false)]
    [InlineData(false, null, "xterm", false)]
    public void Colour_TerminalAndNoColor_IsKept(bool isTerminal, string? noColour, string term, bool wanted)
    {
        Assert.Equal(wanted, Terminal.WantsColour(isTerminal, name => name == "NO_COLOR" ? noColour : term));
    }

    private static string Squeezed(string text) => string.Join('\n', text.Split('\n').Select(line => line.TrimEnd()));
}
