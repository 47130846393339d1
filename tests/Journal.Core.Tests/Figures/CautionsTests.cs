using Journal.Core.Checking;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Figures;

public sealed class CautionsTests
{
    /// <summary>Operations that hurt nobody: paper, gauges and a camera, and what has no name.</summary>
    private static readonly string[] Harmless = ["measuring", "drawing", "planning", "filming", "other"];

    private static readonly CautionKind[] Locked = [CautionKind.Pressure, CautionKind.Steam, CautionKind.Gas, CautionKind.Mains];

    [Fact]
    public void Shared_EveryOperationThatCanHurt_HasACaution()
    {
        var without = VocabularyLoader.Shared.Operations.Ids.Where(id => Cautions.For(id).Count == 0).Select(id => id.Value);

        Assert.Equal(Harmless, without);
    }

    [Fact]
    public void Shared_EveryCaution_IsWholeAndHasASource()
    {
        Assert.True(CautionLoader.Shared.Count >= 30);
        Assert.Equal(CautionLoader.Shared.Count, CautionLoader.Shared.Select(caution => caution.Id).Distinct().Count());
        Assert.All(CautionLoader.Shared, caution =>
        {
            Assert.NotEmpty(caution.Title);
            Assert.NotEmpty(caution.Happens);
            Assert.NotEmpty(caution.Done);
            Assert.NotEmpty(caution.Source);
            Assert.True(caution.Operations.Count + caution.Materials.Count + caution.Words.Count > 0, caution.Id);
        });
    }

    // Every source says in the file whether it was read or remembered; the reader takes no third word for it.
    [Fact]
    public void Shared_Sources_AreLookedUpOrSaidToBeFromMemory()
    {
        var marks = Demo.CautionsFile.Split('\n').Where(line => line.TrimStart().StartsWith("source:", StringComparison.Ordinal)).ToList();

        Assert.Equal(CautionLoader.Shared.Count, marks.Count);
        Assert.All(marks, mark => Assert.Matches("checked: (looked-up|from-memory)}$", mark));
        Assert.Equal(marks.Count(mark => mark.EndsWith("looked-up}", StringComparison.Ordinal)), CautionLoader.Shared.Count(caution => caution.IsLookedUp));
    }

    // The rule at the head of the file stands with each caution; the figures have it taken apart, to look it up.
    [Fact]
    public void For_AnyOperationsOnAnyMaterials_IsWhatTheRuleSays()
    {
        var (operations, materials) = (VocabularyLoader.Shared.Operations.Ids.ToList(), VocabularyLoader.Shared.Materials.Ids.ToList());
        List<CautionedWork> works =
        [
            .. operations.SelectMany(_ => materials, (operation, material) => new CautionedWork([operation], [material])),
            .. operations.Zip(operations.Skip(1), (one, other) => new CautionedWork([one, other], [materials[^1], materials[one.Value.Length % materials.Count]])),
            .. operations.Select(operation => new CautionedWork([operation], [])),
            .. materials.Select(material => new CautionedWork([], [material])),
        ];

        Assert.All(works, work => Assert.Equal(
            CautionLoader.Shared.Where(caution => caution.IsCalledForBy(work.Operations, work.Materials)).Select(caution => caution.Id).Order(),
            Cautions.For([work]).Select(caution => caution.Id).Order()));
        Assert.Contains(works, work => Cautions.For([work]).Any(caution => caution.Operations.Count > 0 && caution.Materials.Count > 0));
    }

    [Fact]
    public void Shared_FourKinds_LeaveItToLocalCodesAndCompetentPeople()
    {
        var locked = CautionLoader.Shared.Where(caution => caution.Kind != CautionKind.Other).ToList();

        Assert.Equal(Locked, locked.Select(caution => caution.Kind).Distinct().Order());
        Assert.All(locked, caution =>
        {
            Assert.Contains("local codes", caution.Done, StringComparison.OrdinalIgnoreCase);
            Assert.Matches("competent|licensed", caution.Done);
        });
    }

    [Fact]
    public void For_OperationAndMaterial_AsksForBothWhereACautionNamesBoth()
    {
        Assert.Contains("leaded-alloys", For("turning", "bronze"));
        Assert.DoesNotContain("leaded-alloys", For("turning", "mild-steel"));
        Assert.DoesNotContain("leaded-alloys", For("assembly", "bronze"));
    }

    [Fact]
    public void For_WorkOnTwoParts_DoesNotMixTheirMaterials()
    {
        var called = Cautions.For([new([new("turning")], [new("mild-steel")]), new([new("assembly")], [new("bronze")])]);

        Assert.DoesNotContain("leaded-alloys", called.Select(caution => caution.Id));
    }

    [Fact]
    public void For_WordsOfAnEntry_AreWholeWords()
    {
        var entry = Sample.Entry("2025-10-03", Sample.Job(60, "measuring"));
        var build = Sample.Build("drill", entry);

        Assert.Contains("steam", Cautions.For(build, entry with { Trials = [new Trial { On = "steam", Pressure = "2 bar" }] }).Select(caution => caution.Id));
        Assert.Empty(Cautions.For(build, entry with { Title = "Steamed up glasses" }));
    }

    [Fact]
    public void Words_EveryPhraseOfEveryCaution_IsFoundInLettersOfEitherCase() => Assert.All(
        CautionLoader.Shared.SelectMany(caution => caution.Words, (caution, phrase) => (caution, phrase)),
        one => Assert.All(
            (string[])[$"On {one.phrase}.", $"({one.phrase.ToUpperInvariant()})", one.phrase],
            text => Assert.Contains(one.caution, CautionLoader.SharedWords.In(text))));

    [Fact]
    public void FewOf_ManyCalled_KeepsEveryOneOfTheFourKinds()
    {
        var called = Cautions.For([new([new("turning"), new("milling"), new("hardening"), new("wiring"), new("leak-testing")], [])], "on steam");

        var few = Cautions.FewOf(called);

        Assert.Equal(Locked, few.Select(caution => caution.Kind).Where(kind => kind != CautionKind.Other).Order());
        Assert.Equal(Cautions.Few, Cautions.FewOf(Cautions.For([new([new("turning"), new("milling")], [])])).Count);
        Assert.Equal(Cautions.Few, Cautions.FewOf(Cautions.For([new([new("turning"), new("wiring")], [])])).Count);
    }

    [Fact]
    public void For_Plan_ReadsPartsAndWhole()
    {
        var plan = new Plan
        {
            Id = new("p"),
            Title = "P",
            File = "plans/p.yaml",
            Parts = [new Part { Id = new("bush"), Title = "Bush", Material = new(new("bronze"), null), Operations = [new("turning")] }],
            Whole = new Dictionary<Id<Operation>, Minutes> { [new("painting")] = new(60) },
        };

        var called = Cautions.For(plan).Select(caution => caution.Id).ToList();

        Assert.Contains("leaded-alloys", called);
        Assert.Contains("flammable-finishes", called);
    }

    // Whatever a maker writes into the journal's files, work with the four kinds keeps their cautions.
    [Theory]
    [InlineData("cautions: none")]
    [InlineData("cautions: {mains: off, gas: off, steam: off, pressure: off}")]
    [InlineData("without: [mains, gas, steam, pressure]")]
    [InlineData("operations: [{id: wiring, title: Wiring, kind: thinking}, {id: welding, title: Welding, kind: thinking}]")]
    public void For_JournalThatWouldSwitchThemOff_KeepsTheFourKinds(string key)
    {
        var folder = Directory.CreateTempSubdirectory("journal-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "journal.yaml"), $"title: The Lean-to\n{key}\n");
            Directory.CreateDirectory(Path.Combine(folder, "drill"));
            File.WriteAllText(Path.Combine(folder, "drill", "build.yaml"), $"title: Drill\n{key}\n");
            File.WriteAllText(
                Path.Combine(folder, "drill", "2025-10-03-all.md"),
                $"---\noperation: [wiring, welding, leak-testing]\nhours: 1h\n{key}\ntrials: {{on: steam}}\n---\nIt ran.\n");

            var journal = JournalReader.Read(folder, DateOnly.MaxValue).Journal!;
            var build = Assert.Single(journal.Builds);

            Assert.Equal(Locked, Cautions.FewOf(Cautions.For(build, Assert.Single(build.Entries))).Select(caution => caution.Kind).Distinct().Where(kind => kind != CautionKind.Other).Order());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static IEnumerable<string> For(string operation, string material) =>
        Cautions.For([new([new(operation)], [new(material)])]).Select(caution => caution.Id);
}
