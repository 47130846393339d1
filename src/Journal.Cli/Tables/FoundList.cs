using Journal.Cli.Output;
using Journal.Cli.Searching;
using Journal.Cli.Wording;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>What was found, for people: the words in context.</summary>
internal static class FoundList
{
    private const int Most = 40;
    private const int MostPassages = 2;

    /// <summary>Kind by kind, each thing with its name and the words around those looked for.</summary>
    public static void Print(MakerJournal journal, IReadOnlyList<Thing> found, SearchWords words, Printout print)
    {
        if (found.Count == 0)
        {
            print.Say("Nothing found. The beginning of a word is enough; fewer words find more.");
            return;
        }

        var titles = new TitleBook(journal);
        foreach (var kind in found.Take(Most).GroupBy(thing => thing.Kind))
        {
            print.Heading(Heading(kind.Key, found.Count(thing => thing.Kind == kind.Key)));
            foreach (var thing in kind)
            {
                print.Hang(thing.Date is { } date ? Written.Date(date) + "  " : "", thing.Title + Where(thing, titles));
                foreach (var passage in words.Passages(thing, MostPassages).Where(passage => passage != thing.Id))
                {
                    print.Hang("    ", passage, Ink.Faint);
                }
            }
        }

        if (found.Count > Most)
        {
            print.Gap();
            print.Say($"{Count.Of(found.Count - Most, "more thing")} found. Another word, `--part`, `--since` or `--until` narrows it down; `--format csv` lists all.");
        }
    }

    private static string Heading(string kind, int count) => kind switch
    {
        "entry" => Casing.Capital(Count.Of(count, "evening")),
        _ => Casing.Capital(Count.Of(count, kind)),
    };

    private static string Where(Thing thing, TitleBook titles) => thing.Kind switch
    {
        "entry" => $" ({thing.Entry})",
        "lesson" => $" (lesson {thing.Id}, {thing.Entry})",
        "reading" => $" ({(thing.Parts[0] is { } part ? Casing.Lower(titles.Of(new PartRef(thing.Build!.Value, part))) + ", " : "")}{thing.Entry})",
        "part" => $" (part {thing.Build}/{thing.Id})",
        "tool" => $" (tool {thing.Id})",
        _ => "",
    };
}
