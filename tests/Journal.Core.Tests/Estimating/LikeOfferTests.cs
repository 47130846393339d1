using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>Finished parts offered as what a part without a guess may be like.</summary>
public sealed class LikeOfferTests
{
    private static readonly DateOnly Today = Day("2026-01-05");

    [Theory]
    [InlineData("Bed", "Bed casting", true)]
    [InlineData("Box table", "Table", true)]
    [InlineData("Feed screws", "Feed screw", true)]
    [InlineData("SPINDLE", "Spindle", true)]
    [InlineData("Table arm", "Table", false)] // an arm is no table
    [InlineData("Feed screw", "Feed lever", false)]
    [InlineData("Hand lever", "Feed lever", false)] // one word of two is not enough
    [InlineData("Casting", "Casting", false)] // tells nothing
    [InlineData("Cam 2", "Cam 7", true)] // numbers tell nothing either
    public void Of_ByTitle_OffersWhatIsMuchTheSame(string title, string past, bool isOffered)
    {
        var journal = Past((past, "cast-iron", "turning")).Planning(Plan("shaper", Bare("bed", title))).Journal();

        var offers = LikeOffer.For(journal, Today);

        Assert.Equal(isOffered ? ["plans/shaper.yaml"] : [], offers.Select(offer => offer.File));
        if (isOffered)
        {
            Assert.Equal($"{title} is much like `drill/part-0`: say `like: drill/part-0`?", offers[0].Offer.Words);
        }
    }

    [Fact]
    public void Of_SeveralAlike_OffersTheNearestInTitleThenMaterialThenOperationsThenTheLatest()
    {
        var shop = Past(("Long bed", "brass", "turning"), ("Bed", "brass", "turning"), ("Bed", "cast-iron", "turning"), ("Bed", "cast-iron", "boring"), ("Bed", "cast-iron", "boring"));

        Assert.Equal("drill/part-4", Offered(Bare("bed", "Bed", "boring")));
        Assert.Equal("drill/part-2", Offered(Bare("bed", "Bed", "turning")));
        Assert.Equal("drill/part-0", Offered(Bare("bed", "Long bed", "boring")));
        string Offered(Part part) => Assert.Single(LikeOffer.For([part], shop.Journal(), History.Of(shop.Journal(), Today))).Like.ToString();
    }

    [Fact]
    public void Of_APartWithAGuessOrALikeOrBegun_IsNotTroubled()
    {
        var shop = Past(("Bed", "cast-iron", "turning"))
            .Planning(Plan("shaper", Bare("bed", "Bed") with { Guess = Hours(3) }, Bare("bed-two", "Bed") with { Like = new(new("drill"), new("part-0")) }))
            .With("lamp", BuildStatus.UnderWay, [Bare("bed", "Bed"), Bare("other-bed", "Bed")], ("2025-12-30", "bed", "turning", 1, null));

        var offer = Assert.Single(LikeOffer.For(shop.Journal(), Today));

        Assert.Equal(("lamp/build.yaml", "other-bed"), (offer.File, offer.Offer.Part.Id.Value));
    }

    [Fact]
    public void Of_APlanThatWasBegunOrABuildThatIsFinished_IsNotAsked()
    {
        var shop = Past(("Bed", "cast-iron", "turning")).Planning(Plan("drill", Bare("bed", "Bed")));

        Assert.Empty(LikeOffer.For(shop.Journal(), Today));
    }

    [Fact]
    public void Of_AnEstimate_OffersAndAssumesNothing()
    {
        var estimate = EstimateTests.Estimated(Past(("Bed", "cast-iron", "turning")).Journal(), Plan("shaper", Bare("bed", "Bed", "boring")));

        Assert.Equal("drill/part-0", Assert.Single(estimate.Offers).Like.ToString());
        Assert.DoesNotContain("like", estimate.Parts[0].Basis, StringComparison.Ordinal);
    }

    private static Part Bare(string id, string title, params string[] operations) =>
        Part(id, operations: operations) with { Title = title, Material = new Material(new("cast-iron"), null) };

    // A finished drill with parts of these titles, families of material and operations, one a week.
    private static Shop Past(params (string Title, string Material, string Operation)[] parts) => new Shop().With(
        "drill",
        BuildStatus.Finished,
        [.. parts.Select((part, i) => Part($"part-{i}") with { Title = part.Title, Material = new Material(new(part.Material), null) })],
        [.. parts.Select((part, i) => ($"{Day("2025-10-06").AddDays(7 * i):yyyy-MM-dd}", $"part-{i}", part.Operation, 3.0, (string?)$"part-{i}"))]);
}
