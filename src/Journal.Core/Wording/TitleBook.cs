using Journal.Core.Model;

namespace Journal.Core.Wording;

/// <summary>Titles for ids: people read “Gib screw”, not <c>gib-screw</c>.</summary>
public sealed class TitleBook(MakerJournal journal)
{
    private readonly Dictionary<Id<Build>, Build> builds = journal.Builds.ToDictionary(build => build.Id);
    private readonly Dictionary<PartRef, Part> parts = journal.Builds
        .SelectMany(build => build.Parts.DistinctBy(part => part.Id), (build, part) => (Ref: new PartRef(build.Id, part.Id), Part: part))
        .ToDictionary(pair => pair.Ref, pair => pair.Part);
    private readonly Dictionary<Id<Tool>, Tool> tools = journal.Tools.DistinctBy(tool => tool.Id).ToDictionary(tool => tool.Id);

    /// <summary>A build's title.</summary>
    public string Of(Id<Build> build) => builds.TryGetValue(build, out var found) ? found.Title : build.ToTitle();

    /// <summary>A part's title.</summary>
    public string Of(PartRef part) => parts.TryGetValue(part, out var found) ? found.Title : part.Part.ToTitle();

    /// <summary>A tool's title.</summary>
    public string Of(Id<Tool> tool) => tools.TryGetValue(tool, out var found) ? found.Title : tool.ToTitle();

    /// <summary>An operation's title.</summary>
    public string Of(Id<Operation> operation) =>
        journal.Vocabulary.Operations.Has(operation) ? journal.Vocabulary.Operations[operation].Title : operation.ToTitle();

    /// <summary>A cause's title; “No cause given” for none.</summary>
    public string Of(Id<Cause>? cause) => cause is not { } id ? "No cause given"
        : journal.Vocabulary.Causes.Has(id) ? journal.Vocabulary.Causes[id].Title : id.ToTitle();

    /// <summary>A family of materials' title.</summary>
    public string Of(Id<MaterialFamily> material) =>
        journal.Vocabulary.Materials.Has(material) ? journal.Vocabulary.Materials[material].Title : material.ToTitle();

    /// <summary>Operations within a sentence: “boring and reaming”.</summary>
    public string InSentence(IReadOnlyList<Id<Operation>> operations) =>
        Count.List([.. operations.Select(operation => Casing.Lower(Of(operation)))]);

    /// <summary>A word of ours as a title: <c>PuttingRight</c> reads “Putting right”.</summary>
    public static string OfWord<T>(T value)
        where T : struct, Enum => Titles.FromId(value.ToWord());
}
