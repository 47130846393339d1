namespace Journal.Core.Tests.PlainWords;

/// <summary>Purchases, runs, snags and lessons, by the classes of words that tell of them.</summary>
public sealed class EventTests
{
    [Theory]
    [InlineData("Turned the quill. Bought cutting oil 8.50.", "cutting oil", 8.5)]
    [InlineData("turned the quill i bought flux six pound ninety nine", "flux", 6.99)]
    [InlineData("Turned the quill. Paid eleven pounds forty for a stick of brass.", "stick of brass", 11.4)]
    [InlineData("Painted the base. Paint was thirty-one dollars.", "Paint", 31)]
    [InlineData("Painted the base. Tin of primer £9, had a brush.", "Tin of primer", 9)]
    [InlineData("Turned the quill. Coil cost me 68.", "Coil", 68)]
    [InlineData("Turned the quill. I bought an edge finder for twenty-two fifty.", "edge finder", 22.5)]
    public void Sum_Paid_StandsWithItsThing(string account, string what, double cost)
    {
        var bought = Assert.Single(Told.OfTheDrill(account).Bought);
        Assert.Equal((what, (decimal)cost), (bought.What, bought.Cost));
    }

    [Theory]
    [InlineData("Turned the quill. Saw a broach set for 42 bucks, passed.")]
    [InlineData("Turned the quill. A 20 reamer is 38 EUR, no.")]
    [InlineData("Turned the quill. Maureen's cousin offers a micrometer set, £45, said no.")]
    [InlineData("Turned the quill. The tin was £12, I had it already from the railings.")]
    [InlineData("Turned the quill. Not bought: the 48 reamer at 61.")]
    public void Sum_NotPaid_IsNoPurchase(string account) => Assert.Empty(Told.OfTheDrill(account).Bought);

    [Theory]
    [InlineData("It ran on air for eight minutes, about 140 revs.", "air", 8)]
    [InlineData("Assembled the drill. Spun it by hand for five minutes.", "hand", 5)]
    [InlineData("I borrowed a compressor, and at 15 psi it turned over for six minutes.", "air", 6)]
    [InlineData("twenty five minutes she ran tonight on the spirit burner", "spirit burner", 25)]
    public void Run_OnSomething_IsATrial(string account, string on, int minutes)
    {
        var proposal = Told.OfTheDrill(account);
        Assert.Equal((on, (int?)minutes), (Assert.Single(proposal.Trials).On, proposal.Trials[0].Time?.Count));
        Assert.Empty(proposal.Settings);
    }

    [Theory]
    [InlineData("This film runs to twelve minutes.")]
    [InlineData("His ran on steam for an hour.")]
    [InlineData("I did not run it on air.")]
    [InlineData("Ran the reamer through by hand, ten minutes.")]
    public void Run_OfSomethingElse_IsNoTrial(string account) => Assert.Empty(Told.OfTheDrill(account).Trials);

    [Theory]
    [InlineData("Assembled the head. There's a light knock at the top pulley.", "There's a light knock at the top pulley")]
    [InlineData("Assembled the head. New snag: the oil cup is loose.", "the oil cup is loose")]
    [InlineData("Bored the table arm. One of the clamp screws of the arm is stripped.", "One of the clamp screws of the arm is stripped")]
    public void Fault_ThereNow_IsASnag(string account, string snag) => Assert.Equal(snag, Assert.Single(Told.OfTheDrill(account).Snags).Text);

    [Theory]
    [InlineData("Bored the head. It still needs its stud holes.")]
    [InlineData("The quill binds no more.")]
    [InlineData("Snag nite, 1h45 in all.")]
    [InlineData("My mate's pulley squeaks.")]
    public void Fault_Gone_OrWorkToCome_IsNoSnag(string account) => Assert.Empty(Told.OfTheDrill(account).Snags);

    [Theory]
    [InlineData("Bored the head. Lesson: mark the throw before it goes in the chuck.", "mark the throw before it goes in the chuck")]
    [InlineData("Bored the head. So what have I learned? Support the wall from inside.", "Support the wall from inside")]
    [InlineData("bored the head and the lesson is wire it before you heat it um the bore is 1.125", "wire it before you heat it")]
    [InlineData("Bored the head. A lesson, then, for the blackboard: turn it one revolution by hand before switching on.", "turn it one revolution by hand before switching on")]
    [InlineData("Bored the head. That's the lesson: oil the key before it goes in.", "oil the key before it goes in")]
    public void Advice_Announced_IsALesson(string account, string lesson) => Assert.Equal(lesson, Assert.Single(Told.OfTheDrill(account).Lessons).Text);

    [Theory]
    [InlineData("I clocked both ends, because that is a lesson I have already paid for.")]
    [InlineData("Spotted first, lesson paid for itself.")]
    [InlineData("Rule 1 and I blew it.")]
    public void Lesson_OnlyNamed_IsNone(string account) => Assert.Empty(Told.OfTheDrill(account).Lessons);

    [Fact]
    public void KnownLesson_Done_IsHeeded_AndToldToOthersIsNot()
    {
        Assert.Equal("indicate-both-ends", Assert.Single(Told.OfTheDrill("Indicated the rough casting at both ends and averaged before the first cut, like I learned.").Heeded).Id.Value);
        Assert.Empty(Told.OfTheDrill("Lock every slide that is not being fed, everybody.").Heeded);
    }

    [Theory]
    [InlineData("Turned a gland nut too, not drawn anywhere, 20m.", "gland nut")]
    [InlineData("Also turned an oil cup from hex brass, 15 min, not on my list yet.", "oil cup")]
    [InlineData("The fuel tank isn't on my parts list, but I drew it tonight.", "fuel tank")]
    public void Part_NotListed_IsNew(string account, string part) => Assert.Equal(part, Assert.Single(Told.OfTheDrill(account).NewParts).Text);

    [Theory]
    [InlineData("Lapped the table on a bit of plate glass.", "plate glass")]
    [InlineData("Set the head true with a test bar Archie lent me.", "test bar")]
    public void Tool_UsedAndNotInTheCrib_IsNew(string account, string tool) => Assert.Equal(tool, Assert.Single(Told.OfTheDrill(account).NewTools).Text);

    [Theory]
    [InlineData("There's a right way, with a steady rest, and I don't own one.")]
    [InlineData("My mate did his with a surface grinder.")]
    public void Tool_NotUsed_IsNotNew(string account) => Assert.Empty(Told.OfTheDrill(account).NewTools);

    [Theory]
    [InlineData("i knocked up a little drilling jig a bit of flat with two pins in it", "drilling jig", "jig")]
    [InlineData("Made a stub mandrel for the pulley bore.", "stub mandrel", "fixture")]
    public void Fixture_Made_IsATool(string account, string title, string kind)
    {
        var made = Assert.Single(Told.OfTheDrill(account).Made);
        Assert.Equal((title, kind), (made.Title, made.Kind));
    }

    [Theory]
    [InlineData("Turned the quill. I ran it at 280.", 280)]
    [InlineData("Milled the rack. Feed 2 in/min at 900.", 900)]
    public void Speed_WithoutItsUnit_IsASetting(string account, int rpm) => Assert.Equal(rpm, Assert.Single(Told.OfTheDrill(account).Settings).Rpm);

    [Theory]
    [InlineData("Cut six millimetres off the column.")]
    [InlineData("The spindle runs out 0.08 millimetres now on the dial indicator.")]
    public void Length_OfSomethingElse_IsNoDepth(string account) => Assert.Empty(Told.OfTheDrill(account).Settings);
}
