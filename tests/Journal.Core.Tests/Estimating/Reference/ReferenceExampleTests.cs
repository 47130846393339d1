namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>The reference itself against the worked example of docs/estimating.md.</summary>
public sealed class ReferenceExampleTests
{
    private static readonly ReferenceMethod Method = new(
    [
        Done("head", 8, ("boring", 9), ("turning", 3)),
        Done("quill", 6, ("turning", 5)),
        Done("cap", 2, ("boring", 4)),
    ]);

    [Fact]
    public void Habits_OfTheExample_AreThoseOfThePage()
    {
        Assert.Equal([8.93739, 4.41141, 5.61803], Method.Typical.Select(hours => Math.Round(hours, 5)));
        Assert.Equal(0.89512, Method.Lambda, 5);
        Assert.Equal([2.8374, 1.66953, -0.03223, 0.61507, 0.03077, 0.05853, 0.34752], Told(Method.WithGuess));
        Assert.Equal([2.9994, 1.79747, -0.15747, 1.19566, 0.32278, 0.01562, 0.90154], Told(Method.Without));
    }

    [Fact]
    public void Parts_OfTheExample_AreThoseOfThePage()
    {
        var frame = Method.Middle(new PartToForecast(["boring", "turning"], 1, 10));
        var bush = Method.Middle(new PartToForecast(["turning"], 1, null));
        var left = (Method.TimeOf("turning") + 0.5 * Method.TimeOf("boring")) / (Method.TimeOf("turning") + Method.TimeOf("boring"));

        Assert.Equal([2.32648, 1.57180, 0.73495], new[] { frame, bush, left }.Select(value => Math.Round(value, 5)));
        Assert.Equal([4.142, 10.242, 25.326], Range(Method.WithGuess, frame, 0, 1, 1));
        Assert.Equal([0.707, 4.815, 32.815], Range(Method.Without, bush, 0, 1, 1));
        Assert.Equal([5.701, 11.527, 37.302], Range(Method.WithGuess, frame, 4, left, 1.8));
    }

    [Fact]
    public void Date_OfTheExample_IsThatOfThePage()
    {
        var monday = new DateOnly(2026, 3, 2);
        int[] hours = [4, 0, 6, 2, 0];
        var entries = hours.Select((count, week) => (Count: count, Day: monday.AddDays(7 * (week - 5)))).Where(week => week.Count > 0)
            .Select(week => new KitEntry(week.Day, "evening", [new KitJob(60 * week.Count, ["turning"], [])], []));
        var dates = new ReferenceDates(new Kit("page", monday, [new KitBuild("build") { Entries = [.. entries] }], new KitBuild("plan")));

        Assert.Equal([4, 0, 6, 2, 0], dates.Weeks);
        Assert.Equal(monday.AddDays(22), dates.Day(9, run => 2));
    }

    private static PastPart Done(string id, double guess, params (string Operation, double Hours)[] by)
    {
        var operations = by.Select(one => one.Operation).ToArray();
        return new PastPart("one", id, default, 1, operations, [.. by.Select(one => one.Hours)], by.Sum(one => one.Hours), guess, operations);
    }

    private static double[] Told(ReferenceColumn column) =>
    [
        Math.Round(column.Parts, 4),
        .. new[] { column.Mean, column.Slope, column.Scatter, column.V, column.Habit, column.Shared }.Select(value => Math.Round(value, 5)),
    ];

    private static double[] Range(ReferenceColumn column, double middle, double spent, double share, double widening)
    {
        var item = new ReferenceItem("part", HasGuess: true, spent, share, middle, column.Shared, widening * column.Scatter);
        return [.. new[] { 0.1, 0.5, 0.9 }.Select(p => Math.Round(item.At(p, 0, 1), 3))];
    }
}
