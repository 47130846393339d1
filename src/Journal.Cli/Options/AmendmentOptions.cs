using System.CommandLine;
using Journal.Cli.Commands.Adding;
using Journal.Cli.Writing.Amending;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Options;

/// <summary>The options that say what shall be added to an entry.</summary>
internal sealed class AmendmentOptions
{
    private readonly Option<string[]> lessons = Many("--lesson", "words", "What to do next time; beside one `--mistake`, what that one taught.");
    private readonly Option<string[]> readings = Many("--reading", "words", "A size measured: `bore 12.009`, or `bore 12 H7 = 12.009 with bore-gauge`.");
    private readonly Option<string[]> settings = Many("--setting", "words", "Speed, feed and depth: `480 rpm, depth 0.5, verdict good`.");
    private readonly Option<string[]> finished = Many("--finished", "part", "A part that is finished, or pieces of it: `gib-screw:2`.");
    private readonly Option<string[]> snags = Many("--snag", "words", "Something still to put right.");
    private readonly Option<string[]> cleared = Many("--cleared", "snag", "A snag that is put right: its id, or words in it.");
    private readonly Option<string[]> mistakes = Many("--mistake", "words", "What went wrong, in a sentence.");
    private readonly Option<string?> cause = new("--cause") { HelpName = "word", Description = "Why that mistake was made." };
    private readonly Option<string?> lost = new("--lost") { HelpName = "time", Description = "The time that it cost, such as 45m." };
    private readonly Option<string?> next = Additions.Text("--next", "words", "What to do next, where the entry does not say so yet.");
    private readonly Option<string[]> captions = Many("--caption", "words", "What a picture shows: `head.jpg: the bore, at last`.");
    private readonly Option<bool> allCaptions = new("--captions") { Description = "Ask for a line for each picture without words." };

    /// <summary>The options, to be added to a command.</summary>
    public IReadOnlyList<Option> All => [lessons, readings, settings, finished, snags, cleared, mistakes, cause, lost, next, captions, allCaptions];

    /// <summary>Whether all pictures without words are to be gone through.</summary>
    public bool WantsCaptions(ParseResult asked) => asked.GetValue(allCaptions);

    /// <summary>What was said.</summary>
    /// <exception cref="Writing.UsageException">Something of it means nothing.</exception>
    public Amendment Of(ParseResult asked, AmendmentWords words)
    {
        string[] Said(Option<string[]> option) => asked.GetValue(option) ?? [];
        var (why, time) = (words.Cause(asked.GetValue(cause)), AmendmentWords.Lost(asked.GetValue(lost)));
        Additions.Refuse((why ?? time) is not null && Said(mistakes).Length != 1, "`--cause` and `--lost` belong to one `--mistake`; say just one.");
        var isTaught = Said(mistakes).Length == 1 && Said(lessons).Length == 1;
        return new Amendment
        {
            Mistakes = [.. Said(mistakes).Select(what => new NewMistake(what) { Cause = why, Lost = time, Lesson = isTaught ? Said(lessons)[0] : null })],
            Lessons = isTaught ? [] : Said(lessons),
            Readings = [.. Said(readings).Select(words.Reading)],
            Settings = [.. Said(settings).Select(words.Setting)],
            Finished = [.. Said(finished).Select(words.Finished).DistinctBy(one => one.Part)],
            Snags = Said(snags),
            Cleared = [.. Said(cleared).Select(words.Snag).Distinct()],
            Next = asked.GetValue(next),
            Captions = [.. Said(captions).Select(words.Caption)],
        };
    }

    private static Option<string[]> Many(string name, string what, string description) => new(name)
    {
        Description = description,
        HelpName = what,
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
        Validators =
        {
            result =>
            {
                if (result.Tokens.Any(token => string.IsNullOrWhiteSpace(token.Value)))
                {
                    result.AddError($"`{name}` wants words behind it; leave it out where there are none.");
                }
            },
        },
    };
}
