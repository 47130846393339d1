using System.CommandLine;
using System.CommandLine.Parsing;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary><c>--format table|csv|json</c>.</summary>
internal static class FormatOption
{
    /// <summary>The option, one to a command.</summary>
    public static Option<OutputFormat> Create() => Of(
        "For people (table, the default), spreadsheets (csv; a text that begins like a formula gets an apostrophe in front) or programs (json).",
        EnumNames.All<OutputFormat>(),
        "table|csv|json");

    /// <summary>The same for an answer that is no list of rows.</summary>
    public static Option<OutputFormat> WithoutCsv() => Of("For people (table, the default) or programs (json).", [OutputFormat.Table.ToWord(), OutputFormat.Json.ToWord()], "table|json");

    private static Option<OutputFormat> Of(string description, IReadOnlyList<string> words, string helpName)
    {
        var option = new Option<OutputFormat>("--format")
        {
            Description = description,
            HelpName = helpName,
            CustomParser = result => Read(result, words),
            DefaultValueFactory = _ => OutputFormat.Table,
        };
        option.CompletionSources.Clear();
        option.CompletionSources.Add(_ => words.Select(word => new System.CommandLine.Completions.CompletionItem(word)));
        return option;
    }

    private static OutputFormat Read(ArgumentResult result, IReadOnlyList<string> words)
    {
        var word = result.Tokens[0].Value;
        if (!words.Contains(word) || !EnumNames.TryFind<OutputFormat>(word, out var format))
        {
            result.AddError($"There is no format `{word}`. {Suggestion.For(word, [.. words], "formats")}");
            return OutputFormat.Table;
        }

        return format;
    }
}
