using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands.Adding;

/// <summary>What the commands below <c>journal add</c> share: options that are checked, and refusals.</summary>
internal static class Additions
{
    private const int MostPieces = 100_000;
    private const decimal MostMoney = 1_000_000_000;

    /// <summary>Adds, with the journal in one's hands, and says what was added to what, and in which file.</summary>
    public static int Write(OpenJournal open, Terminal terminal, string told, Func<Lines, Core.Writing.Entries.Written> write)
    {
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        var written = write(new Lines(open.Folder));
        Refuse(written.File is null, written.WhyNot);
        terminal.Complain(told);
        terminal.Out.WriteLine(Path.Combine(open.Folder, written.File!.Replace('/', Path.DirectorySeparatorChar)));
        return ExitStatus.Well;
    }

    /// <summary><c>--quantity</c>.</summary>
    public static Option<int?> Quantity(string description) => new("--quantity") { Description = description, HelpName = "number", CustomParser = ReadQuantity };

    /// <summary>Refuses a name that no part can have.</summary>
    public static void RefusePart(string name)
    {
        Refuse(!Id<Part>.HasRightForm(name), NoId(name));
        Refuse(name == "whole", "`whole` means the build as a whole. Give the part another name.");
    }

    private static string NoId(string word) => $"`{word}` is not a valid id. Use lower-case words joined by hyphens, such as gib-screw.";

    private static int? ReadQuantity(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var quantity) && quantity is > 0 and <= MostPieces)
        {
            return quantity;
        }

        result.AddError($"`{word}` is not a whole number from 1 to {MostPieces.ToString(CultureInfo.InvariantCulture)}. Use digits, such as `--quantity 4`.");
        return null;
    }

    public static Argument<string> Id(string description) => new("id")
    {
        Description = description,
        CustomParser = result =>
        {
            var word = result.Tokens[0].Value;
            if (!Id<object>.HasRightForm(word))
            {
                result.AddError(NoId(word));
            }

            return word;
        },
    };

    public static Option<string?> Text(string name, string what, string description) => new(name) { Description = description, HelpName = what, CustomParser = result => ReadText(name, result) };

    private static string? ReadText(string name, ArgumentResult result)
    {
        if (string.IsNullOrWhiteSpace(result.Tokens[0].Value))
        {
            result.AddError($"`{name}` needs a value. Leave it out if there is none.");
        }

        return result.Tokens[0].Value;
    }

    public static Option<decimal?> Number(string name, string what, string description) => new(name)
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

        result.AddError($"`{name}` needs an amount without a currency, such as 12.50, up to 1000000000.");
        return null;
    }

    public static string? Plain(decimal? number) => number?.ToString(CultureInfo.InvariantCulture);

    public static void Known<T>(WordList<T> words, string? text, string whatItIs, string whatTheyAre)
        where T : class
    {
        var word = text?.Split(' ')[0].TrimEnd(',');
        Refuse(word is not null && !words.TryFind(word, out _), $"There is no {whatItIs} `{word}`. {(word is null ? "" : Suggestion.For(word, words.Spellings, whatTheyAre))}");
    }

    public static void OneOf<T>(string? word, string option)
        where T : struct, Enum =>
        Refuse(word is not null && !EnumNames.TryFind<T>(word, out _), $"`{option}` must be one of {string.Join(", ", EnumNames.All<T>())}.");

    public static void Refuse(bool isWrong, string why)
    {
        if (isWrong)
        {
            throw new UsageException(why);
        }
    }
}
