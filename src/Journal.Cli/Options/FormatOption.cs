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
    public static Option<OutputFormat> Create()
    {
        var option = new Option<OutputFormat>("--format")
        {
            Description = "For people (table, the default), spreadsheets (csv; a text that begins like a formula gets an apostrophe in front) or programs (json).",
            HelpName = "table|csv|json",
            CustomParser = Read,
            DefaultValueFactory = _ => OutputFormat.Table,
        };
        option.CompletionSources.Clear();
        option.CompletionSources.Add(_ => EnumNames.All<OutputFormat>().Select(word => new System.CommandLine.Completions.CompletionItem(word)));
        return option;
    }

    private static OutputFormat Read(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (!EnumNames.TryFind<OutputFormat>(word, out var format))
        {
            result.AddError($"There is no format `{word}`. {Suggestion.For(word, [.. EnumNames.All<OutputFormat>()], "formats")}");
        }

        return format;
    }
}
