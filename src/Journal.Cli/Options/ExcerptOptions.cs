using System.CommandLine;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary>By what a figure can be narrowed down.</summary>
[Flags]
internal enum Narrows
{
    /// <summary>By nothing.</summary>
    None = 0,

    /// <summary>By <c>--build</c>.</summary>
    Build = 1,

    /// <summary>By <c>--part</c>.</summary>
    Part = 2,

    /// <summary>By <c>--since</c> and <c>--until</c>.</summary>
    Dates = 4,
}

/// <summary><c>--build</c>, <c>--part</c>, <c>--since</c> and <c>--until</c>: the figures of a piece of the journal.</summary>
/// <param name="by">By what the figure can be narrowed down.</param>
internal sealed class ExcerptOptions(Narrows by)
{
    private readonly Option<string?> build = JobOptions.OfAny();
    private readonly Option<string?> part = PartOption.Create();
    private readonly Option<DateOnly?> since = TodayOption.Named("--since", "Only from this day on, such as 2025-09-01.");
    private readonly Option<DateOnly?> until = TodayOption.Named("--until", "Only up to this day, itself included.");

    /// <summary>The options, to be added to a command.</summary>
    public IReadOnlyList<Option> Options =>
    [
        .. by.HasFlag(Narrows.Build) ? new Option[] { build } : [],
        .. by.HasFlag(Narrows.Part) ? new Option[] { part } : [],
        .. by.HasFlag(Narrows.Dates) ? new Option[] { since, until } : [],
    ];

    /// <summary>Build and days as said; null for what was not.</summary>
    public (string? Build, DateOnly? Since, DateOnly? Until) Said(ParseResult asked) => (Value(asked, build), Value(asked, since), Value(asked, until));

    /// <summary>The part as said; null where none was.</summary>
    public string? Part(ParseResult asked) => Value(asked, part);

    /// <summary>Why no piece of the journal can be meant; null where one can.</summary>
    public string? Objection(ParseResult asked, MakerJournal journal)
    {
        var said = Said(asked);
        return said.Build is { } named && journal.Builds.All(one => one.Id.Value != named)
                ? $"There is no build `{named}`. {Suggestion.For(named, [.. journal.Builds.Select(one => one.Id.Value)], "builds")}"
            : said.Until < said.Since ? $"`--until` comes before `--since`."
            : PartOption.Objection(Part(asked), journal);
    }

    /// <summary>The piece of the journal that was asked for; all of it where nothing was.</summary>
    public MakerJournal Of(ParseResult asked, MakerJournal journal)
    {
        var (named, from, to) = Said(asked);
        var piece = Excerpt.Of(journal, named is null ? null : new(named), from, to);
        return Part(asked) is { } word ? Excerpt.OfPart(piece, (of, one) => PartOption.Takes(word, of, one)) : piece;
    }

    /// <summary>Whether something of a build and an evening is within it; what has no evening is within all days.</summary>
    public bool Takes(ParseResult asked, Id<Build> of, DateOnly? date)
    {
        var (named, from, to) = Said(asked);
        return (named is null || of.Value == named) && (date is null || ((from is null || date >= from) && (to is null || date <= to)));
    }

    // An option that the command does not have was not given.
    private T? Value<T>(ParseResult asked, Option<T> option) => Options.Contains(option) ? asked.GetValue(option) : default;
}
