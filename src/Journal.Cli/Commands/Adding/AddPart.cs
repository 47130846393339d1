using System.CommandLine;
using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing;
using static Journal.Cli.Commands.Adding.Additions;

namespace Journal.Cli.Commands.Adding;

/// <summary><c>journal add part</c>: a line of a parts list.</summary>
internal static class AddPart
{
    /// <summary>The command, talking to a terminal.</summary>
    public static ExampledCommand Create(Terminal terminal)
    {
        var (id, folder, build, title) = (Id("The part's id, such as gib-screw."), InOption.Create(), JobOptions.Build(), Text("--title", "words", "Its title."));
        var (item, material, stock) = (Text("--item", "number", "Its number on the drawing."), Text("--material", "words", "What it is made of, such as mild-steel 070M20."), Text("--stock", "words", "What it is made from, such as round 32 x 180."));
        var (drawing, guess) = (Text("--drawing", "words", "The drawing sheet that shows it."), Text("--guess", "time", "How long you think it will take, such as 3h."));
        var (quantity, like) = (Quantity("How many the build needs."), Text("--like", "build/part", "A similar part made before, for the estimate, such as bench-drill/head."));
        var plan = new Option<string?>("--plan") { Description = "The plan to add it to, instead of a build.", HelpName = "id" };
        var command = new ExampledCommand("part", "Add a part to a build or a plan.", "journal add part gib-screw --quantity 4 --material brass") { id, title, item, quantity, material, stock, drawing, guess, like, build, plan, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var (list, name) = (ListOf(open, asked.GetValue(plan), asked.GetValue(build), terminal), asked.GetValue(id)!);
            RefusePart(name);
            Refuse(list.Parts.Any(one => one.Id.Value == name), $"{list.Title} already has a part `{name}`.");
            Known(open.Journal.Vocabulary.Materials, asked.GetValue(material), "material", "materials");
            Known(open.Journal.Vocabulary.StockForms, asked.GetValue(stock), "form of stock", "forms");
            Refuse(asked.GetValue(guess) is { } hours && !Core.Writing.Entries.HoursText.IsDuration(hours), $"`{asked.GetValue(guess)}` is not a time. Write `3h` or `45m`.");
            RefuseUnlike(asked.GetValue(like), open.Journal);
            return Write(open, terminal, $"Added to {list.Title}: the part `{name}`.", lines => list.Add(lines, [
                ("id", name),
                ("item", asked.GetValue(item)),
                ("title", asked.GetValue(title)),
                ("material", asked.GetValue(material)),
                ("stock", asked.GetValue(stock)),
                ("drawing", asked.GetValue(drawing)),
                ("quantity", asked.GetValue(quantity)?.ToString(CultureInfo.InvariantCulture)),
                ("guess", asked.GetValue(guess)),
                ("like", asked.GetValue(like)),
            ]));
        }));
        return command;
    }

    private static PartsList ListOf(OpenJournal open, string? plan, string? build, Terminal terminal)
    {
        if (plan is null)
        {
            var into = open.BuildFor(build, terminal);
            return new PartsList(into.Title, into.Parts, (lines, keys) => lines.AddPart(into, keys));
        }

        Refuse(build is not null, "Use either `--plan` or `--build`, not both.");
        var found = open.Journal.PlanNamed(plan);
        Refuse(found is null, EstimateSubjects.NoneNamed(plan, "plan", [.. open.Journal.Plans.Select(one => one.Id.Value)]));
        Refuse(open.Journal.BegunAs(found!) is not null, $"{found!.Title} has become a build. Add the part there, with `--build {plan}`.");
        return new PartsList(found.Title, found.Parts, (lines, keys) => lines.AddPart(found, keys));
    }

    private static void RefuseUnlike(string? like, MakerJournal journal)
    {
        var known = journal.Builds.SelectMany(build => build.Parts.Select(part => $"{build.Id}/{part.Id}")).ToList();
        Refuse(like is not null && !known.Contains(like), $"There is no part `{like}`. {Suggestion.For(like ?? "", known, "parts")}");
    }

    private sealed record PartsList(string Title, IReadOnlyList<Part> Parts, Func<Lines, IReadOnlyList<(string Key, string? Value)>, Core.Writing.Entries.Written> Add);
}
