using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>The text of a new entry.</summary>
public static partial class NewEntry
{
    private static readonly string[] Gaps = ["part", "operation", "hours"];

    /// <summary>An evening: one job in the short form, several as a list.</summary>
    /// <param name="evening">The evening.</param>
    /// <param name="jobs">The work in its order; at least one job.</param>
    /// <param name="words">What else is said; its tools only where the one job names none.</param>
    public static string Of(DateOnly evening, IReadOnlyList<NewJob> jobs, WriteUp words)
    {
        var text = new StringBuilder("---\n");
        Key(text, "title", words.Title is null ? null : YamlText.Of(words.Title));
        Key(text, "date", Date(evening));
        foreach (var (key, value) in jobs is [var only] ? only.Keys : [])
        {
            Key(text, key, value);
        }

        List(text, "jobs", jobs.Count > 1 ? jobs.Select(job => job.ToYaml()) : []);
        text.Append(Beside(words)).Append("---\n").Append(words.Account);
        if (text[^1] != '\n')
        {
            text.Append('\n');
        }

        text.Append(words is { Account.Length: > 0, Remarks.Count: > 0 } ? "\n" : "");
        foreach (var line in Text(words.Remarks))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The keys of a note's jobs, part, operation and hours left blank where they are not known: there the maker fills them in.</summary>
    internal static string WithGaps(IReadOnlyList<NewJob> jobs)
    {
        var text = new StringBuilder();
        List(text, "jobs", jobs.Count > 1 ? jobs.Select(job => job.ToYaml()) : []);
        foreach (var (key, value) in jobs.Count > 1 ? [] : jobs is [var only] ? only.Keys : new NewJob([], [], "").Keys)
        {
            if (value is null && Gaps.Contains(key))
            {
                text.Append(key).Append(":\n");
            }

            Key(text, key, value);
        }

        return text.ToString();
    }

    /// <summary>The keys of what is said beside the jobs, a line each.</summary>
    internal static string Beside(WriteUp words)
    {
        var text = new StringBuilder();
        foreach (var (key, value) in words.Keys())
        {
            Key(text, key, value);
        }

        foreach (var (key, items) in words.Lists)
        {
            List(text, key, items);
        }

        return text.ToString();
    }

    /// <summary>An evening whose jobs are a list, so that the next stint can be added to it.</summary>
    public static string OfStint(DateOnly evening, NewJob job)
    {
        var text = new StringBuilder("---\n");
        Key(text, "date", Date(evening));
        List(text, "jobs", [job.ToYaml()]);
        return text.Append("---\n").ToString();
    }

    /// <summary>
    /// A name for an evening's entry that is not taken: <c>2025-10-03-boring-head</c>, then <c>2025-10-03-boring-head-2</c>.
    /// </summary>
    public static string Name(DateOnly evening, NewJob job, Func<string, bool> isTaken)
    {
        var words = new[] { job.Operations.Count == 0 ? null : job.Operations[0], job.Parts.Count == 0 || job.Parts[0] == "whole" ? null : job.Parts[0] }.OfType<string>().Where(word => Id<object>.HasRightForm(word)).ToList();
        var name = string.Join('-', [Date(evening), .. words.Count == 0 ? ["evening"] : words]);
        return Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}-{n}")).First(one => !isTaken(one));
    }

    /// <summary>Remarks as lines of text: a paragraph for one, a list for several. Their times stay out; pages never show them.</summary>
    internal static IReadOnlyList<string> Text(IReadOnlyList<string> remarks) => remarks.Count == 1 ? [Plain(remarks[0])] : [.. remarks.Select(remark => $"- {Plain(remark)}")];

    // A sign in front, such as that of “- 0.05 mm”, would begin a list, a heading or a quotation, and not be seen.
    private static string Plain(string remark) => MarkInFront().Replace(remark, "$1\\$2");

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static void Key(StringBuilder text, string key, string? value)
    {
        if (value is not null)
        {
            text.Append(key).Append(": ").Append(value).Append('\n');
        }
    }

    private static void List(StringBuilder text, string key, IEnumerable<string> items)
    {
        foreach (var (i, item) in items.Index())
        {
            text.Append(i == 0 ? $"{key}:\n" : "").Append("  - ").Append(item).Append('\n');
        }
    }

    [GeneratedRegex(@"^([0-9]{1,9}(?=[.)](?:\s|$)))?([-+*.)](?=\s|$)|#{1,6}(?=\s|$)|>|`{3}|~{3}|(?:[-*_]\s*){3,}$)", RegexOptions.CultureInvariant)]
    private static partial Regex MarkInFront();
}
