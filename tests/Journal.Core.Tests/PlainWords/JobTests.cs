namespace Journal.Core.Tests.PlainWords;

/// <summary>Which words tell of tonight's work, how long it took, with what and in what it was held: a line for each class of rule.</summary>
public sealed class JobTests
{
    [Theory]
    [InlineData("Bored the head, 40 min.", "boring")]
    [InlineData("I took a skim off the rim of the head, 20 min.", "turning")]
    [InlineData("Ran a reamer through the head, ten minutes.", "reaming")]
    [InlineData("Cleaned it up with a file, 10 min.", "filing")]
    [InlineData("Opened out the bore of the head, half an hour.", "boring")]
    [InlineData("spent an hour milling the base", "milling")]
    [InlineData("the base i drilled and that was twenty minutes", "drilling")]
    [InlineData("Turned the column between centres, an hour.", "between-centres")]
    [InlineData("Cut the keyway in the spindle, 25 min.", "keyway-cutting")]
    public void Work_NamedOrImplied_IsAJob(string account, string operation) =>
        Assert.Contains(Told.OfTheDrill(account).Jobs, job => job.Operations.Any(done => done.Value == operation));

    [Theory]
    [InlineData("I should have bored the head.")]
    [InlineData("I should have milled the base and drilled it.")]
    [InlineData("Next week I bore the head.")]
    [InlineData("Next: cut the thread on the spindle.")]
    [InlineData("To do: drill the base.")]
    [InlineData("My neighbour bored his head in ten minutes.")]
    [InlineData("Derek turns his column on the mill.")]
    [InlineData("Last month I milled the base.")]
    [InlineData("I did not bore the head.")]
    [InlineData("Did I bore the head?")]
    [InlineData("The bored hole is fine.")]
    [InlineData("No boring tonight.")]
    [InlineData("The drawing wants the head bored.")]
    public void Work_OfOthersOrAnotherDayOrNotDone_IsNone(string account) => Assert.Empty(Told.OfTheDrill(account).Jobs);

    [Theory]
    [InlineData("2 h in all: milled the base 40 min, the rest was drilling it.", "drilling", 80)]
    [InlineData("90 min in total tonight. Half milling the base, half drilling it.", "milling", 45)]
    [InlineData("Milled the base from quarter past six to half past eight, less twenty minutes.", "milling", 115)]
    [InlineData("Out 7.10, in 9.25. Milled the base.", "milling", 135)]
    [InlineData("Milled the base, an hour, no, an hour and a half.", "milling", 90)]
    [InlineData("Milled the top of the base with great care along both of its long sides,\nan hour and twenty in the vice with the old cutter.", "milling", 80)]
    public void Time_ToldInShares_IsReckoned(string account, string operation, int minutes) =>
        Assert.Equal(minutes, Told.OfTheDrill(account).Jobs.First(job => job.Operations.Any(done => done.Value == operation)).Time?.Count);

    [Theory]
    [InlineData("Milled the base, 1h20 incl 25 setting up.", 80, 25)]
    [InlineData("Milled the base, an hour and a quarter all in, forty minutes of that clocking it in.", 75, 40)]
    [InlineData("I spent fifty minutes setting up the base, then an hour of actual milling.", 110, 50)]
    public void SetUp_InTheTimeOrBesideIt_IsPartOfIt(string account, int minutes, int setUp)
    {
        var job = Assert.Single(Told.OfTheDrill(account).Jobs);
        Assert.Equal((minutes, setUp), (job.Time?.Count, job.SetUp?.Count));
    }

    [Theory]
    [InlineData("This film is forty minutes long. Milled the base.")]
    [InlineData("Milled the base. My mate does his in ten minutes.")]
    [InlineData("Milled the base. Waited an hour for the paint to dry.")]
    [InlineData("Milled the base. It would take three hours to scrape.")]
    public void Time_OfSomethingElse_IsNotTheJobs(string account) => Assert.All(Told.OfTheDrill(account).Jobs, job => Assert.Null(job.Time));
}
