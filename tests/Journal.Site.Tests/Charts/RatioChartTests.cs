using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class RatioChartTests
{
    private static readonly DateOnly Day = new(2025, 9, 6);

    // From a half to four times is three doublings of 80 px: half lies at the base (260), as guessed at 180, twice at 100.
    [Fact]
    public void Draw_HalfAsGuessedAndFourTimes_LieEvenlyOnALogScale()
    {
        var drawn = new Drawn(RatioChart.Draw("r", "R", "D", [Part(4, 2), Part(4, 4), Part(4, 8), Part(4, 16)], new(1, 0.9, 1.1)));

        Assert.Equal([260, 180, 100, 20], drawn.Numbers("circle", "cy"));
        Assert.Equal(["0.5 times", "as guessed", "2 times", "4 times"], drawn.Texts.Take(4));
        Assert.Equal([180], drawn.Numbers("line.mid", "y1"));
    }

    [Fact]
    public void Draw_TheHabitsDoubt_IsABandFromLowToHigh()
    {
        var drawn = new Drawn(RatioChart.Draw("r", "R", "D", [Part(4, 4)], new(Math.Sqrt(2), 1, 2)));

        // From half to twice, 240 px high: as guessed in the middle, twice at the top.
        Assert.Equal([20], drawn.Numbers("rect.area", "y"));
        Assert.Equal([120], drawn.Numbers("rect.area", "height"));
        Assert.Equal([80], drawn.Numbers("line.mid", "y1"));
        Assert.Equal([50], drawn.Numbers("circle", "cx"));
    }

    [Fact]
    public void Draw_InOrderOfFinishing_RunsFromLeftToRightAndStandsInTheTable()
    {
        var drawn = new Drawn(RatioChart.Draw("r", "R", "D", [Part(4, 6, "Head"), Part(10, 5, "Cap"), Part(2, 2, "Pin")], new(1, 0.9, 1.1)));

        Assert.Equal(drawn.Numbers("circle", "cx").Order(), drawn.Numbers("circle", "cx"));
        Assert.Equal(["Head", "Cap", "Pin"], drawn.View.Table.Rows.Select(row => row.Name));
        Assert.Equal(["2025-09-06", "4\u202fh", "6\u202fh", "1.50"], drawn.View.Table.Rows[0].Cells);
    }

    private static GuessAndHours Part(double guess, double taken, string label = "Part") => new(label, Day, guess, taken);
}
