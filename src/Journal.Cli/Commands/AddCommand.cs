using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Journal.Cli.Asking;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Trade;
using Journal.Core.Writing;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal add</c>: a build, a part or a tool, as a line in the right file.</summary>
internal static class AddCommand
{
    private const int MostPieces = 100_000;
    private const decimal MostMoney = 1_000_000_000;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) =>
        new ExampledCommand("add", "A build, a part or a tool: a line in the right file, its neighbours untouched.", "journal add part lever --quantity 2 --material brass")
        {
            BuildCommand(terminal), PartCommand(terminal), ToolCommand(terminal),
        };

    private static ExampledCommand BuildCommand(Terminal terminal)
    {
        var (id, folder, title) = (IdArgument("The build's folder, such as bench-drill."), InOption.Create(), Text("--title", "words", "Its title."));
        var (units, cost) = (Text("--units", "mm|inch", "The unit of its drawings, where that is not the journal's."), Number("--cost", "sum", "What the kit cost."));
        var started = TodayOption.Named("--started", "The day it is begun, such as 2025-09-06. Left out: today.", "--today");
        var command = new ExampledCommand("build", "A build of its own folder.", "journal add build bench-drill --title \"Sensitive bench drill\"") { id, title, units, cost, started, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var name = asked.GetValue(id)!;
            Refuse(!Lines.MayNameABuild(name), $"The name `{name}` is taken: the site, or Windows, uses it for something else. Choose another.");
            Refuse(open.Journal.Builds.Any(build => build.Id.Value == name), $"There is a build `{name}` already.");
            Refuse(asked.GetValue(units) is { } unit && unit is not ("mm" or "inch"), "Units are `mm` or `inch`.");
            return Write(open, terminal, lines => lines.AddBuild(name, [
                ("title", asked.GetValue(title) ?? Titles.FromId(name)),
                ("status", "under-way"),
                ("started", Wording.Written.Date(asked.GetValue(started) ?? open.Clock.Evening(terminal.Now))),
                ("units", asked.GetValue(units)),
                ("cost", Plain(asked.GetValue(cost))),
            ]));
        }));
        return command;
    }

    private static ExampledCommand PartCommand(Terminal terminal)
    {
        var (id, folder, build, title) = (IdArgument("The part's id, such as gib-screw."), InOption.Create(), JobOptions.Build(), Text("--title", "words", "Its title."));
        var (item, material, stock) = (Text("--item", "number", "Its number on the drawing."), Text("--material", "words", "What it is made of, such as mild-steel 070M20."), Text("--stock", "words", "What it is made from, such as round 32 x 180."));
        var (drawing, guess) = (Text("--drawing", "words", "The sheet that shows it."), Text("--guess", "time", "How long you think it will take, such as 3h."));
        var quantity = new Option<int?>("--quantity") { Description = "How many the build needs.", HelpName = "number", CustomParser = ReadQuantity };
        var command = new ExampledCommand("part", "A part of a build.", "journal add part gib-screw --quantity 4 --material brass") { id, title, item, quantity, material, stock, drawing, guess, build, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var (into, name) = (open.Build(asked.GetValue(build)), asked.GetValue(id)!);
            Refuse(name == "whole", "`whole` means the build as a whole. Give the part another name.");
            Refuse(into.HasPart(new(name)), $"{into.Title} has a part `{name}` already.");
            Known(open.Journal.Vocabulary.Materials, asked.GetValue(material), "material", "materials");
            Known(open.Journal.Vocabulary.StockForms, asked.GetValue(stock), "form of stock", "forms");
            Refuse(asked.GetValue(guess) is { } hours && !Core.Writing.Entries.HoursText.IsDuration(hours), $"`{asked.GetValue(guess)}` is not a time. Write `3h` or `45m`.");
            return Write(open, terminal, lines => lines.AddPart(into, [
                ("id", name),
                ("item", asked.GetValue(item)),
                ("title", asked.GetValue(title)),
                ("material", asked.GetValue(material)),
                ("stock", asked.GetValue(stock)),
                ("drawing", asked.GetValue(drawing)),
                ("quantity", asked.GetValue(quantity)?.ToString(CultureInfo.InvariantCulture)),
                ("guess", asked.GetValue(guess)),
            ]));
        }));
        return command;
    }

    private static ExampledCommand ToolCommand(Terminal terminal)
    {
        var (id, folder, title) = (IdArgument("The tool's id, such as boring-head."), InOption.Create(), Text("--title", "words", "Its title."));
        var (kind, got) = (Text("--kind", "word", "What it is, such as gauge."), Text("--got", "word", $"How it came: {string.Join(", ", Words.All<Got>())}."));
        var (cost, need) = (Number("--cost", "sum", "What it cost."), Text("--need", "word", $"How much it is needed: {string.Join(", ", Words.All<Need>())}."));
        var command = new ExampledCommand("tool", "A tool in the crib.", "journal add tool boring-head --kind tool-holding --got bought --cost 85") { id, title, kind, got, cost, need, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var name = asked.GetValue(id)!;
            Refuse(open.Journal.Tools.Any(tool => tool.Id.Value == name && tool.IsListed), $"There is a tool `{name}` already.");
            Known(open.Journal.Vocabulary.ToolKinds, asked.GetValue(kind), "kind of tool", "kinds of tools");
            OneOf<Got>(asked.GetValue(got), "--got");
            OneOf<Need>(asked.GetValue(need), "--need");
            return Write(open, terminal, lines => lines.AddTool([
                ("id", name),
                ("title", asked.GetValue(title)),
                ("kind", asked.GetValue(kind)),
                ("got", asked.GetValue(got)),
                ("cost", Plain(asked.GetValue(cost))),
                ("need", asked.GetValue(need)),
            ]));
        }));
        return command;
    }

    private static int Write(OpenJournal open, Terminal terminal, Func<Lines, Core.Writing.Entries.Written> write)
    {
        using var slate = SlateFile.Take(open.Folder);
        var written = write(new Lines(open.Folder));
        Refuse(written.File is null, written.WhyNot);
        terminal.Out.WriteLine(Path.Combine(open.Folder, written.File!.Replace('/', Path.DirectorySeparatorChar)));
        return ExitStatus.Well;
    }

    private static int? ReadQuantity(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var quantity) && quantity is > 0 and <= MostPieces)
        {
            return quantity;
        }

        result.AddError($"`{word}` is not a number of pieces from 1 to {MostPieces.ToString(CultureInfo.InvariantCulture)}. Write it in digits, such as `--quantity 4`.");
        return null;
    }

    private static Argument<string> IdArgument(string description) => new("id")
    {
        Description = description,
        CustomParser = result =>
        {
            var word = result.Tokens[0].Value;
            if (!Id<object>.HasRightForm(word))
            {
                result.AddError($"`{word}` is not an id. Write lower-case words joined by hyphens, such as gib-screw.");
            }

            return word;
        },
    };

    private static Option<string?> Text(string name, string what, string description) => new(name) { Description = description, HelpName = what, CustomParser = result => ReadText(name, result) };

    private static string? ReadText(string name, ArgumentResult result)
    {
        if (string.IsNullOrWhiteSpace(result.Tokens[0].Value))
        {
            result.AddError($"`{name}` wants words behind it; leave it out where there are none.");
        }

        return result.Tokens[0].Value;
    }

    private static Option<decimal?> Number(string name, string what, string description) => new(name)
    {
        Description = description,
        HelpName = what,
        CustomParser = result => ReadNumber(name, result),
    };

    private static decimal? ReadNumber(string name, ArgumentResult result)
    {
        if (decimal.TryParse(result.Tokens[0].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number <= MostMoney)
        {
            return number;
        }

        result.AddError($"`{name}` wants the sum alone, such as 12.50, and no more than a thousand million.");
        return null;
    }

    private static string? Plain(decimal? number) => number?.ToString(CultureInfo.InvariantCulture);

    private static void Known<T>(WordList<T> words, string? text, string whatItIs, string whatTheyAre)
        where T : class
    {
        var word = text?.Split(' ')[0].TrimEnd(',');
        Refuse(word is not null && !words.TryFind(word, out _), $"There is no {whatItIs} `{word}`. {(word is null ? "" : Suggestion.For(word, words.Spellings, whatTheyAre))}");
    }

    private static void OneOf<T>(string? word, string option)
        where T : struct, Enum =>
        Refuse(word is not null && !Words.TryFind<T>(word, out _), $"`{option}` is one of {string.Join(", ", Words.All<T>())}.");

    private static void Refuse(bool isWrong, string why)
    {
        if (isWrong)
        {
            throw new WrongWordException(why);
        }
    }
}
