using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Writing.Names;

namespace Journal.Cli.Commands;

/// <summary><c>journal split part</c>: several parts where one was written.</summary>
internal static class SplitCommand
{
    private const int MostWeight = 100;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var build = JobOptions.Build();
        var old = new Argument<string>("part") { Description = "The part; `build/part` names one of another build." };
        var parts = new Argument<SplitPart[]>("parts") { Description = "What it becomes, two or more; `cap=2` takes twice the time of the others.", Arity = ArgumentArity.OneOrMore, CustomParser = Read };
        var changes = new NameChanges();
        var part = new ExampledCommand("part", "Several parts of one: its hours and guesses are shared; readings, links and purchases go to the first.", "journal split part head head cap") { old, parts, build };
        foreach (var option in changes.Options)
        {
            part.Add(option);
        }

        part.SetAction(asked => changes.Run(asked, terminal, open =>
        {
            var (of, name) = PartOfBuild.Find(open, asked.GetValue(build), asked.GetValue(old)!);
            return new Splitting(open.Folder, open.Journal).Part(of, name, asked.GetValue(parts)!);
        }));
        return new ExampledCommand("split", "Several parts where one was written. Shows every line first.", "journal split part head head cap --dry-run") { part };
    }

    private static SplitPart[] Read(ArgumentResult result)
    {
        var parts = new List<SplitPart>();
        foreach (var word in result.Tokens.Select(token => token.Value))
        {
            var pieces = word.Split('=');
            var weight = 1;
            if (pieces.Length > 2 || (pieces.Length == 2 && !(int.TryParse(pieces[1], NumberStyles.None, CultureInfo.InvariantCulture, out weight) && weight is >= 1 and <= MostWeight)))
            {
                result.AddError($"`{word}` is not a part with its weight. Write it in digits, such as `cap=2`.");
            }

            parts.Add(new SplitPart(pieces[0], weight));
        }

        return [.. parts];
    }
}
