using Journal.Cli.Tests;

namespace Journal.Site.Tests.Output;

/// <summary>Small changes that tests make to a journal.</summary>
internal static class Changes
{
    public const string Quill = "drill/2025-09-07-quill.md";

    /// <summary>The journal with one word replaced in a file.</summary>
    public static JournalOnDisk Change(this JournalOnDisk journal, string file, string from, string to)
    {
        var path = Path.Combine(journal.Folder, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
        return journal;
    }

    /// <summary>The journal without a file.</summary>
    public static JournalOnDisk Without(this JournalOnDisk journal, string file)
    {
        File.Delete(Path.Combine(journal.Folder, file));
        return journal;
    }
}
