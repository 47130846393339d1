using System.CommandLine;
using System.Globalization;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary>An entry as a maker names it: by id, by date, or by words of its title and text; the latest where none is named.</summary>
internal static class EntryArgument
{
    private const int MostListed = 8;

    /// <summary>The argument, one to a command.</summary>
    public static Argument<string[]> Create(string description) => new("entry") { Description = description, Arity = ArgumentArity.ZeroOrMore };

    /// <summary>The entry that is meant.</summary>
    /// <param name="words">What was said; nothing for the latest.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build it must be of; null for any.</param>
    /// <param name="folder">The journal's folder, whose files tell which of one evening's entries was written last.</param>
    /// <param name="tonight">The evening of today: what is dated later is seldom meant.</param>
    /// <exception cref="UsageException">There is none, or several are meant.</exception>
    public static Entry Find(IReadOnlyList<string> words, MakerJournal journal, Id<Build>? build, string folder, DateOnly tonight)
    {
        var entries = journal.Entries.Where(entry => build is null || entry.Build == build).ToList();
        if (entries.Count == 0)
        {
            throw new UsageException("There are no entries yet. `journal write` makes the first.");
        }

        if (words.Count == 0)
        {
            return Latest(entries, folder, tonight);
        }

        return string.Join(' ', words) is var said && Named(said, entries) is { Count: > 0 } named ? Only(said, named)
            : WithWords(words, entries) is { Count: > 0 } found ? Only(said, found)
            : throw new UsageException($"There is no entry `{said}`. {Hint(said, entries)}");
    }

    private static Entry Latest(List<Entry> entries, string folder, DateOnly tonight)
    {
        var past = entries.Where(entry => entry.Date <= tonight).ToList();
        var date = (past.Count > 0 ? past : entries).Max(entry => entry.Date);
        return entries.Where(entry => entry.Date == date)
            .OrderBy(entry => File.GetLastWriteTimeUtc(Path.Combine(folder, entry.File.Replace('/', Path.DirectorySeparatorChar))))
            .ThenBy(entry => entry.Ref)
            .Last();
    }

    private static List<Entry> Named(string said, List<Entry> entries) =>
        [.. entries.Where(entry => entry.Id.Value == said || entry.Ref.ToString() == said || (SaidDate.TryRead(said, out var date) && entry.Date == date))];

    private static List<Entry> WithWords(IReadOnlyList<string> words, List<Entry> entries)
    {
        bool Says(string text, string word) => CultureInfo.InvariantCulture.CompareInfo.IndexOf(text, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace) >= 0;
        var parts = words.SelectMany(word => word.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
        var inTitle = entries.Where(entry => parts.TrueForAll(word => Says(entry.Title, word) || Says(entry.Id.Value, word))).ToList();
        return inTitle.Count > 0 ? inTitle : [.. entries.Where(entry => parts.TrueForAll(word => Says(entry.Title, word) || Says(entry.Body.Text, word)))];
    }

    private static Entry Only(string said, List<Entry> found)
    {
        if (found is [var only])
        {
            return only;
        }

        var listed = string.Join(", ", found.OrderByDescending(entry => entry.Date).Take(MostListed).Select(entry => $"`{entry.Ref}` ({entry.Title})"));
        var rest = found.Count > MostListed ? $" and {(found.Count - MostListed).ToString(CultureInfo.InvariantCulture)} older" : "";
        throw new UsageException($"`{said}` may mean {found.Count.ToString(CultureInfo.InvariantCulture)} entries; name one by its id: {listed}{rest}.");
    }

    private static string Hint(string said, List<Entry> entries) =>
        Suggestion.Nearest(said, [.. entries.Select(entry => entry.Id.Value)]) is { } nearest ? $"Did you mean `{nearest}`?"
            : $"Name it by its id, its date or words in it; the latest is `{entries[^1].Id}`.";
}
