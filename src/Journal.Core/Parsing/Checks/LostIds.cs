using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>
/// What files that could not be read would have defined. One fault should give one problem: what points into such a
/// file is not reported until the file itself can be read.
/// </summary>
internal sealed partial class LostIds
{
    private readonly HashSet<string> ids = new(StringComparer.Ordinal);
    private readonly HashSet<(Id<Build> Build, string Id)> entries = [];
    private readonly HashSet<Id<Build>> builds = [];
    private bool isCribLost;
    private bool isAnyPossible;

    /// <summary>A build without its parts list.</summary>
    public void Add(Id<Build> build) => builds.Add(build);

    /// <summary>The tool crib.</summary>
    public void AddCrib() => isCribLost = true;

    /// <summary>An entry, with its text where at least that could be had.</summary>
    public void Add(Id<Build> build, string entry, string? text)
    {
        entries.Add((build, entry));
        isAnyPossible |= text is null;
        foreach (Match match in DefinedId().Matches(text ?? ""))
        {
            ids.Add(match.Groups[1].Value);
        }
    }

    /// <summary>Whether an id may be defined in a file that could not be read, so that it is not reported as unknown.</summary>
    public bool Has(IdKind kind, Id<Build>? build, string id) => kind switch
    {
        IdKind.Part => build is { } known && builds.Contains(known),
        IdKind.Entry => build is { } known && (entries.Contains((known, id)) || builds.Contains(known)),
        IdKind.PartOrTool => Has(IdKind.Part, build, id) || Has(IdKind.Tool, null, id),
        IdKind.Tool => isCribLost || MayBeInAnEntry(id),
        _ => MayBeInAnEntry(id),
    };

    /// <summary>Whether a lost entry's name begins with a date.</summary>
    public bool HasEntryOn(Id<Build> build, string date) => entries.Any(entry => entry.Build == build && entry.Id.StartsWith(date, StringComparison.Ordinal));

    // By an id of its own, or by one made from the entry's name and a number.
    private bool MayBeInAnEntry(string id) =>
        isAnyPossible || ids.Contains(id) || entries.Any(entry => id.StartsWith($"{entry.Id}-", StringComparison.Ordinal) || id.StartsWith($"{entry.Build}-{entry.Id}-", StringComparison.Ordinal));

    [GeneratedRegex("\\bid: *[\"']?([a-z0-9-]+)", RegexOptions.CultureInvariant)]
    private static partial Regex DefinedId();
}
