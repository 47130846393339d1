using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing;

/// <summary>Reads a build's <c>build.yaml</c>.</summary>
internal sealed partial class BuildReader(JournalFolder folder, FileScope scope, LengthUnit journalUnits)
{
    /// <summary>The build of a folder; null, with problems, where it cannot be read.</summary>
    public Build? Read(string buildFolder)
    {
        var name = buildFolder[(buildFolder.LastIndexOf('/') + 1)..];
        if (!FileNames.IsFit(name, scope.Start, scope.Log, atTopOfSite: true)
            || folder.Text(scope.File, scope.Log) is not { } text
            || YamlReader.Read(text, scope.File, 1, scope.Log) is not { } map)
        {
            return null;
        }

        var fields = new Fields(map, scope, Keys.Build);
        fields.Wants("title", "Give the build a title, such as `title: Sensitive bench drill`.");
        var id = new Id<Build>(name);
        var units = fields.Choice<Units>("units") is { } given ? given.ToUnit() : journalUnits;
        var parts = new PartKeyReader(scope, id).ReadAll(fields);
        var known = PartsList.Of(parts);
        return new Build
        {
            Id = id,
            Title = fields.Text("title") ?? id.ToTitle(),
            Folder = buildFolder,
            Status = fields.Choice<BuildStatus>("status") ?? BuildStatus.UnderWay,
            Started = fields.Date("started"),
            Units = units,
            Cost = fields.Cost("cost"),
            Drawings = fields.Text("drawings"),
            GeneralTolerance = DimensionKeyReader.GeneralTolerance(fields, scope, units),
            HoursAWeek = Pace.HoursAWeek(fields),
            Away = Pace.Away(fields),
            Parts = parts,
            Whole = WholeKeyReader.Read(fields, scope),
            Formerly = fields.FormerIds(name, IdKind.Build, null),
            Mates = [.. fields.Maps("mates", Keys.Mate).Select(mate => Mate(mate, known)).OfType<Mate>()],
            Videos = [.. fields.Maps("videos", Keys.Video).Select(video => Video(video, id, known)).OfType<Video>()],
        };
    }

    private Mate? Mate(Fields fields, PartsList parts) =>
        Feature(fields, "hole", parts) is { } hole && Feature(fields, "shaft", parts) is { } shaft ? new Mate(hole, shaft) : null;

    private Feature? Feature(Fields fields, string key, PartsList parts)
    {
        if (!fields.Wants(key, "A mate needs a `hole` and a `shaft`, such as `hole: head.bore`.") || fields.Text(key) is not { } text)
        {
            return null;
        }

        var dot = text.IndexOf('.', StringComparison.Ordinal);
        if (dot <= 0 || dot == text.Length - 1)
        {
            scope.Log.Add(ProblemTable.NotAFeature, fields[key]!.Place, text);
            return null;
        }

        return parts.Find(text[..dot], fields[key]!.Place, scope.Log) is { } part ? new Feature(part, text[(dot + 1)..]) : null;
    }

    private Video? Video(Fields fields, Id<Build> build, PartsList parts)
    {
        if (!fields.Wants("url", "Give its address: `url: https://…`.") || fields.Address("url") is not { } url)
        {
            return null;
        }

        var covers = fields.Items("covers").Select(node => (Node: node, Text: fields.TextOf(node, "covers"))).Where(cover => cover.Text is not null).ToArray();
        var days = new List<DateRange>();
        var partIds = new List<Id<Part>>();
        foreach (var (node, text) in covers)
        {
            if (Dates.TryParseRange(text!, out var range))
            {
                days.Add(range);
            }
            else if (parts.Find(text!, node.Place, scope.Log) is { } part)
            {
                partIds.Add(part);
            }
        }

        return new Video
        {
            Url = url,
            Title = fields.Text("title") ?? $"Video of {build.ToTitle()}",
            CoversParts = partIds,
            CoversDays = days,
            Chapters = [.. fields.Maps("chapters", Keys.Chapter).Select(Chapter).OfType<Chapter>()],
        };
    }

    private Chapter? Chapter(Fields fields)
    {
        if (!fields.Wants("at", "Give the time at which it starts, such as `at: \"3:20\"`.") || fields.Text("at") is not { } at)
        {
            return null;
        }

        if (MinutesAndSeconds().Match(at) is not { Success: true } match)
        {
            scope.Log.Add(ProblemTable.NotAMoment, fields["at"]!.Place, at);
            return null;
        }

        int Read(string group) => match.Groups[group] is { Success: true } found ? int.Parse(found.ValueSpan, CultureInfo.InvariantCulture) : 0;
        return new Chapter(Read("h") * 3600 + Read("m") * 60 + Read("s"), fields.Text("title") ?? "");
    }

    [GeneratedRegex("^(?:(?<h>[0-9]{1,2}):(?=[0-9]{2}:))?(?<m>[0-9]{1,3}):(?<s>[0-5][0-9])$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex MinutesAndSeconds();
}
