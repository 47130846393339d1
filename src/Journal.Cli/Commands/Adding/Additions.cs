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

    /// <summary>Makes an addition while no other command writes to the journal, then prints the path of the file that holds it.</summary>
    /// <param name="open">The journal.</param>
    /// <param name="terminal">Gets the path on its output, all else on its error output.</param>
    /// <param name="told">What was added to what, in a sentence.</param>
    /// <param name="write">Makes the addition.</param>
    /// <returns>The exit status.</returns>
    /// <exception cref="UsageException">The addition was refused; nothing was written.</exception>
    public static int Write(OpenJournal open, Terminal terminal, string told, Func<Lines, Core.Writing.Entries.Written> write)
    {
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        var written = write(new Lines(open.Folder));
        Refuse(written.File is null, written.WhyNot);
        terminal.Complain(told);
        terminal.Out.WriteLine(Path.Combine(open.Folder, written.File!.Replace('/', Path.DirectorySeparatorChar)));
        return ExitStatus.Well;
    }

    /// <summary><c>--quantity</c>, a whole number from 1 to 100,000; null where it is not given.</summary>
    public static Option<int?> Quantity(string description) => new("--quantity") { Description = description, HelpName = "number", CustomParser = ReadQuantity };

    /// <summary>Refuses a name that no part can have.</summary>
    /// <exception cref="UsageException">It has not the form of an id, or is <c>whole</c>.</exception>
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

    /// <summary>The id of what is added: small letters, digits and hyphens. Another form is an error of the command line.</summary>
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

    /// <summary>An option that takes a text; an empty one is an error of the command line.</summary>
    /// <param name="name">The option, with its hyphens.</param>
    /// <param name="what">What its value is, for the help.</param>
    /// <param name="description">What it is for, for the help.</param>
    public static Option<string?> Text(string name, string what, string description) => new(name) { Description = description, HelpName = what, CustomParser = result => ReadText(name, result) };

    private static string? ReadText(string name, ArgumentResult result)
    {
        if (string.IsNullOrWhiteSpace(result.Tokens[0].Value))
        {
            result.AddError($"`{name}` needs a value. Leave it out if there is none.");
        }

        return result.Tokens[0].Value;
    }

    /// <summary>An option that takes an amount from 0 to 1,000,000,000 with a decimal point, in the journal's currency.</summary>
    /// <param name="name">The option, with its hyphens.</param>
    /// <param name="what">What its value is, for the help.</param>
    /// <param name="description">What it is for, for the help.</param>
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

    /// <summary>An amount as it is written into a file, with a decimal point whatever the system's language; null for null.</summary>
    public static string? Plain(decimal? number) => number?.ToString(CultureInfo.InvariantCulture);

    /// <summary>Refuses a text whose first word, up to a blank or a comma, is not in a list; null passes.</summary>
    /// <param name="words">The list.</param>
    /// <param name="text">Such as <c>mild-steel 070M20</c>.</param>
    /// <param name="whatItIs">What the word should be, such as <c>material</c>.</param>
    /// <param name="whatTheyAre">The same for several.</param>
    /// <exception cref="UsageException">The word is unknown; the message names the nearest.</exception>
    public static void Known<T>(WordList<T> words, string? text, string whatItIs, string whatTheyAre)
        where T : class
    {
        var word = text?.Split(' ')[0].TrimEnd(',');
        Refuse(word is not null && !words.TryFind(word, out _), $"There is no {whatItIs} `{word}`. {(word is null ? "" : Suggestion.For(word, words.Spellings, whatTheyAre))}");
    }

    /// <summary>Refuses a word that is none of the words of a fixed choice; null passes.</summary>
    /// <exception cref="UsageException">The message names the option and all its words.</exception>
    public static void OneOf<T>(string? word, string option)
        where T : struct, Enum =>
        Refuse(word is not null && !EnumNames.TryFind<T>(word, out _), $"`{option}` must be one of {string.Join(", ", EnumNames.All<T>())}.");

    /// <summary>Ends the command where something is wrong.</summary>
    /// <exception cref="UsageException">It is; the message is <paramref name="why"/>.</exception>
    public static void Refuse(bool isWrong, string why)
    {
        if (isWrong)
        {
            throw new UsageException(why);
        }
    }
}
