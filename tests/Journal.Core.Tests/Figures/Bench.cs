using System.Globalization;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

/// <summary>Small builds with readings and settings.</summary>
internal static class Bench
{
    public static Build Build(params Entry[] entries) => new()
    {
        Id = new("drill"),
        Title = "Drill",
        Folder = "drill",
        Parts =
        [
            new() { Id = new("head"), Title = "Head", Material = new(new("grey-iron"), null) },
            new() { Id = new("quill"), Title = "Quill", Material = new(new("mild-steel"), null) },
        ],
        Entries = entries,
    };

    public static Entry Entry(string date, params MeasuredReading[] readings) => new()
    {
        Id = new(date),
        Build = new("drill"),
        File = $"drill/{date}.md",
        Title = date,
        Date = DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture),
        Jobs = [Job(1, "head", "boring"), Job(2, "quill", "turning")],
        Body = Body.Empty,
        Readings = readings,
    };

    public static Job Job(int number, string part, params string[] operations) => new()
    {
        Number = number,
        Parts = [new(new(part), 1)],
        Operations = [.. operations.Select(operation => new Id<Operation>(operation))],
        Time = new(60),
    };

    /// <summary>A reading of <c>part.feature</c>.</summary>
    public static MeasuredReading Reading(string feature, string? required, string? actual, string? with = null)
    {
        var names = feature.Split('.');
        return new()
        {
            Part = new Id<Part>(names[0]),
            Feature = names[1],
            Required = required,
            Actual = actual,
            With = with is null ? null : new Id<Tool>(with),
            Place = new("drill/entry.md", 7, 3),
        };
    }

    public static MakerJournal Journal(Build build, params Tool[] tools) => new()
    {
        Title = "Bench",
        Id = Guid.Empty,
        Vocabulary = new()
        {
            Operations = WordList<Operation>.Of([]),
            Causes = WordList<Cause>.Of([]),
            Materials = WordList<MaterialFamily>.Of([]),
            StockForms = WordList<StockForm>.Of([]),
            ToolKinds = WordList<ToolKind>.Of([]),
        },
        Tools = tools,
        Builds = [build],
    };

    public static ReadingFigure Judge(string? required, string actual, LengthUnit units = LengthUnit.Millimetre) =>
        Assert.Single(Readings.Of(Journal(Build(Entry("2025-10-03", Reading("head.bore", required, actual))) with { Units = units })).All);

    public static Length Millimetres(decimal value) => new(value, LengthUnit.Millimetre);

    public static Length Inches(decimal value) => new(value, LengthUnit.Inch);
}
