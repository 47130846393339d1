using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;

namespace Journal.Core.Writing.Entries;

/// <summary>What remarks from the bench say, as an entry takes it: lines of text, items under its keys, and pictures.</summary>
/// <param name="Remarks">Lines for the text, in their order.</param>
/// <param name="Items">What goes under keys.</param>
/// <param name="Photos">Pictures, in the order they were taken.</param>
public sealed record ToldTonight(IReadOnlyList<string> Remarks, Amendment Items, IReadOnlyList<NewPhoto> Photos)
{
    private static readonly string[] Kinds =
        [JotKind.Mistake, JotKind.Reading, JotKind.Setting, JotKind.Bought, JotKind.Finished, JotKind.Heeded, JotKind.Cleared, JotKind.Photo];

    private static readonly string[] OfAnySetting = ["diameter", "rpm", "feed", "teeth", "width", "depth", "material", "cutter", "machine", "coolant", "verdict", "note"];

    /// <summary>Nothing.</summary>
    public static ToldTonight Nothing { get; } = new([], new Amendment(), []);

    /// <summary>What remarks say.</summary>
    /// <param name="jots">The remarks, in the order they were made.</param>
    /// <param name="jobs">The jobs of the entry that they go into, by which each finds its own.</param>
    public static ToldTonight Of(IEnumerable<Jot> jots, IReadOnlyList<NewJob> jobs)
    {
        var all = jots.ToList();
        IEnumerable<Jot> Of(string kind) => all.Where(jot => jot.Kind == kind);
        var items = new Amendment
        {
            Mistakes = [.. Of(JotKind.Mistake).Select(jot => MistakeOf(jot, jobs))],
            Readings = [.. Of(JotKind.Reading).Select(ReadingOf)],
            Settings = [.. Of(JotKind.Setting).Select(jot => SettingOf(jot, jobs))],
            Bought = [.. Of(JotKind.Bought).Select(jot => new NewPurchase(jot["what"] ?? jot.Text, CostOf(jot)) { Kind = jot["kind"], For = jot["for"] })],
            Finished = [.. Of(JotKind.Finished).Where(jot => jot["part"] is not null).Select(FinishedOf)],
            Heeded = [.. Of(JotKind.Heeded).Select(jot => jot["id"]).OfType<string>().Distinct()],
            Cleared = [.. Of(JotKind.Cleared).Select(jot => jot["id"]).OfType<string>().Distinct().Select(id => new Id<Snag>(id))],
        };
        return new ToldTonight(
            [.. all.Where(jot => !Kinds.Contains(jot.Kind)).Select(jot => jot.Text)],
            items,
            [.. Of(JotKind.Photo).Where(jot => jot["file"] is not null).Select(jot => new NewPhoto(jot["file"]!, jot["caption"]))]);
    }

    /// <summary>Pictures found in the build's folder, with what was said of them at the bench, and those that only the bench knows.</summary>
    /// <param name="found">The pictures found, in the order they were taken.</param>
    public IReadOnlyList<NewPhoto> With(IReadOnlyList<NewPhoto> found)
    {
        var captions = Photos.DistinctBy(photo => photo.File).ToDictionary(photo => photo.File, photo => photo.Caption);
        return
        [
            .. found.Select(photo => photo with { Caption = photo.Caption ?? captions.GetValueOrDefault(photo.File) }),
            .. Photos.DistinctBy(photo => photo.File).Where(photo => found.All(other => other.File != photo.File)),
        ];
    }

    /// <summary>What was said otherwise, with these behind it.</summary>
    public Amendment With(Amendment said) => said with
    {
        Mistakes = [.. said.Mistakes, .. Items.Mistakes],
        Heeded = [.. said.Heeded.Union(Items.Heeded)],
        Readings = [.. said.Readings, .. Items.Readings],
        Settings = [.. said.Settings, .. Items.Settings],
        Bought = [.. said.Bought, .. Items.Bought],
        Finished = [.. said.Finished, .. Items.Finished.Where(one => said.Finished.All(other => other.Part != one.Part))],
        Cleared = [.. said.Cleared.Union(Items.Cleared)],
    };

    private static NewMistake MistakeOf(Jot jot, IReadOnlyList<NewJob> jobs) =>
        new(jot["what"] ?? jot.Text) { Cause = jot["cause"], Lost = jot["lost"], Lesson = jot["lesson"], Job = JobOf(jot, jobs) };

    private static NewReading ReadingOf(Jot jot) =>
        new(jot["feature"] ?? jot.Text, jot["required"], jot["actual"] ?? "", jot["with"]) { Part = jot["part"] };

    private static NewSetting SettingOf(Jot jot, IReadOnlyList<NewJob> jobs) =>
        new([.. OfAnySetting.Where(key => jot[key] is not null).Select(key => (key, jot[key]!))]) { Job = JobOf(jot, jobs) };

    private static decimal CostOf(Jot jot) => decimal.TryParse(jot["cost"], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var cost) ? cost : 0;

    private static Finished FinishedOf(Jot jot) =>
        new(new(jot["part"]!), int.TryParse(jot["pieces"], NumberStyles.None, CultureInfo.InvariantCulture, out var pieces) && pieces > 0 ? pieces : null);

    // The last job of the same part and operation, else of the same part, else the first.
    private static int JobOf(Jot jot, IReadOnlyList<NewJob> jobs)
    {
        var ofPart = jobs.Index().Where(job => jot["part"] is { } part && job.Item.Parts.Contains(part)).ToList();
        var meant = ofPart.Where(job => jot["operation"] is { } operation && job.Item.Operations.Contains(operation)).ToList();
        var index = meant.Count > 0 ? meant[^1].Index : ofPart.Count > 0 ? ofPart[^1].Index : 0;
        return index + 1;
    }
}
