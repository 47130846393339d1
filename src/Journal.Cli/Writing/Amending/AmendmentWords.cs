using System.Globalization;
using Journal.Cli.Commands.Adding;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing.Amending;

/// <summary>What a maker says of an entry, understood by what the journal knows. What means nothing is refused with a remedy.</summary>
/// <param name="journal">The journal.</param>
/// <param name="entry">The entry.</param>
internal sealed class AmendmentWords(MakerJournal journal, Entry entry)
{
    private readonly Build build = journal.Builds.Single(build => build.Id == entry.Build);

    /// <summary>The pictures of the entry that say nothing yet, by their files from the build's folder.</summary>
    public IReadOnlyList<string> Wordless => [.. entry.Photos.Where(photo => photo.Caption is null).Select(FileOf)];

    /// <summary>A reading.</summary>
    /// <exception cref="UsageException">It means nothing, or cannot be.</exception>
    public NewReading Reading(string line)
    {
        var reading = SaidReading.Read(line) ?? throw new UsageException($"“{line}” is not a reading. {SaidReading.Form}");
        Additions.Refuse(reading.With is { } tool && journal.Tools.All(one => one.Id.Value != tool), NoTool(reading.With));
        Judge(entry with
        {
            Readings = [.. entry.Readings, new MeasuredReading { Feature = reading.Feature, Part = PartOf(entry), Required = reading.Required, Actual = reading.Actual, Place = Sentinel }],
        });
        return reading;
    }

    /// <summary>A setting.</summary>
    /// <exception cref="UsageException">It means nothing, or cannot be.</exception>
    public NewSetting Setting(string line)
    {
        var setting = SaidSetting.Read(line) ?? throw new UsageException($"“{line}” is not a setting. {SaidSetting.Form}");
        string? Value(string key) => setting.Keys.Where(pair => pair.Key == key).Select(pair => pair.Value).FirstOrDefault();
        Additions.Refuse(Value("machine") is { } machine && journal.Tools.All(one => one.Id.Value != machine), NoTool(Value("machine")));
        Additions.Known(journal.Vocabulary.Materials, Value("material"), "material", "materials");
        var (rpm, teeth) = (Number(Value("rpm")), Value("teeth"));
        Additions.Refuse(Value("rpm") is not null && rpm is null or <= 0, $"“{Value("rpm")}” is not a speed. Write turns a minute as a number, such as `480 rpm`.");
        Additions.Refuse(teeth is not null && !(int.TryParse(teeth, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0), $"“{teeth}” is not a number of teeth.");
        Judge(entry with
        {
            Settings = [.. entry.Settings, new Setting { Diameter = Value("diameter"), Rpm = rpm, Feed = Value("feed"), Width = Value("width"), Depth = Value("depth"), Place = Sentinel }],
        });
        return setting;
    }

    /// <summary>A part finished, or so many pieces of it: <c>quill</c>, <c>gib-screw:2</c>.</summary>
    /// <exception cref="UsageException">There is no such part, or it is finished already.</exception>
    public Finished Finished(string line)
    {
        var words = line.Split([':', '=', ' '], StringSplitOptions.RemoveEmptyEntries);
        Additions.Refuse(words.Length is 0 or > 2, "Name one part, such as `quill`; or pieces of it, such as `gib-screw:2`.");
        var part = build.Parts.FirstOrDefault(part => part.Id.Value == words[0])
            ?? throw new UsageException($"{build.Title} has no part `{words[0]}`. {Suggestion.For(words[0], [.. build.Parts.Select(part => part.Id.Value)], "parts")}");
        var left = State.Of(journal).Builds.Single(state => state.Build == build.Id).ToGo.FirstOrDefault(one => one.Part == part.Id)?.Pieces ?? 0;
        Additions.Refuse(left == 0, $"{part.Title} is finished already.");
        if (words.Length == 1)
        {
            return new Finished(part.Id, null);
        }

        Additions.Refuse(!int.TryParse(words[1], NumberStyles.None, CultureInfo.InvariantCulture, out var pieces) || pieces < 1, $"“{words[1]}” is not a number of pieces.");
        Additions.Refuse(pieces > left, $"{part.Title}: {left.ToString(CultureInfo.InvariantCulture)} {(left == 1 ? "piece is" : "pieces are")} still to be finished, not {words[1]}.");
        return new Finished(part.Id, pieces);
    }

    /// <summary>A snag that is open, by its id or by words in it.</summary>
    /// <exception cref="UsageException">None is meant, or several.</exception>
    public Id<Snag> Snag(string line)
    {
        var open = State.Of(journal).Builds.Single(state => state.Build == build.Id).Snags;
        if (open.FirstOrDefault(one => one.Snag.Id.Value == line) is { } named)
        {
            return named.Snag.Id;
        }

        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var meant = open.Where(one => words.All(word => one.Snag.Text.Contains(word, StringComparison.OrdinalIgnoreCase))).ToList();
        return meant is [var only] ? only.Snag.Id
            : open.Count == 0 ? throw new UsageException($"{build.Title} has no open snags.")
            : throw new UsageException($"“{line}” means {(meant.Count == 0 ? "no open snag" : "several open snags")}. Open: {string.Join("; ", open.Select(one => $"`{one.Snag.Id}` ({one.Snag.Text})"))}");
    }

    /// <summary>A cause by any of its spellings; null for null.</summary>
    /// <exception cref="UsageException">There is no such cause.</exception>
    public string? Cause(string? word)
    {
        var causes = journal.Vocabulary.Causes;
        return word is null ? null : causes.TryFind(word, out var id) ? id.Value
            : throw new UsageException($"There is no cause `{word}`. {Suggestion.For(word, causes.Spellings, "causes")}");
    }

    /// <summary>Time lost; null for null.</summary>
    /// <exception cref="UsageException">It is not a time.</exception>
    public static string? Lost(string? text) =>
        text is null || HoursText.IsDuration(text) ? text : throw new UsageException($"“{text}” is not a time. Write `45m` or `1h15`.");

    /// <summary>What a picture shows: <c>head.jpg: the bore, at last</c>, or the words alone where one picture is without any.</summary>
    /// <exception cref="UsageException">It cannot be told which picture is meant, or it has words already.</exception>
    public NewPhoto Caption(string line)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        var named = colon < 0 ? [] : Wordless.Where(file => Path.GetFileName(file) == line[..colon].Trim() || file == line[..colon].Trim()).ToList();
        var (file, words) = named is [var one] ? (one, line[(colon + 1)..].Trim()) : Wordless is [var only] ? (only, line) : (null, line);
        return file is not null && words.Length > 0 ? new NewPhoto(file, words)
            : Wordless.Count == 0 ? throw new UsageException(entry.Photos.Count == 0 ? $"{entry.Id} has no pictures." : $"All pictures of {entry.Id} have their words already.")
            : throw new UsageException($"Say which picture: `{Path.GetFileName(Wordless[0])}: what it shows`. Without words: {string.Join(", ", Wordless.Select(Path.GetFileName))}.");
    }

    private Place Sentinel => new(entry.File, 0, 0);

    private string FileOf(Photo photo) =>
        photo.File.StartsWith($"{build.Folder}/", StringComparison.Ordinal) ? photo.File[(build.Folder.Length + 1)..] : photo.File;

    private string NoTool(string? tool) =>
        $"There is no tool `{tool}`. {Suggestion.For(tool ?? "", [.. journal.Tools.Select(one => one.Id.Value)], "tools")}";

    private static Id<Part>? PartOf(Entry entry) => entry.Jobs.FirstOrDefault(job => job.Parts.Count == 1)?.Parts[0].Part;

    private static decimal? Number(string? text) => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    // What `journal check` would say of it once it stood there is said now.
    private void Judge(Entry longer)
    {
        var changed = journal with
        {
            Builds = [build with { Entries = [.. build.Entries.Select(one => one.Ref == entry.Ref ? longer : one)] }],
        };
        var fault = Readings.Of(changed).Findings.Concat(Settings.Of(changed).Findings).FirstOrDefault(finding => finding.Place == Sentinel)?.Fault;
        Additions.Refuse(fault is not null, $"{fault?.What} {fault?.Remedy}");
    }
}
