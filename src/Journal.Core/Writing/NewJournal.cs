using System.Globalization;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing;

/// <summary>A new journal with one small example build, from <c>shared/start/</c>, and the schemas of its files.</summary>
public static class NewJournal
{
    /// <summary>The folder of the schemas in a journal, which no reading of it looks into.</summary>
    public const string SchemaFolder = ".schemas";

    // What can be made again, or is of this evening only, has no history worth keeping.
    private const string NotKept = "# Left out of git: published sites, and what is chalked up at the bench tonight.\nsite/\n.site*\n.bench/\n";

    private const string Example = "start/";
    private const string Schemas = "schemas/";

    /// <summary>Writes the files of a new journal into a folder that is empty or not there yet.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="title">The journal's title.</param>
    /// <param name="today">The day; the example's evenings lie shortly before it.</param>
    /// <param name="zone">The time zone of the bench by its IANA name.</param>
    /// <returns>The files in the order written; the journal's own comes last, so that half a journal is none.</returns>
    public static IReadOnlyList<string> Write(string folder, string title, DateOnly today, string zone)
    {
        var (first, second) = (Date(today.AddDays(-3)), Date(today.AddDays(-1)));
        string Filled(string text) => text
            .Replace("{title}", YamlText.Of(title), StringComparison.Ordinal)
            .Replace("{id}", Guid.NewGuid().ToString("D"), StringComparison.Ordinal)
            .Replace("{zone}", zone, StringComparison.Ordinal)
            .Replace("{first}", first, StringComparison.Ordinal)
            .Replace("{second}", second, StringComparison.Ordinal);

        var written = new List<string>();
        SafeFile.TryCreate(Path.Combine(folder, ".gitignore"), NotKept);
        written.Add(".gitignore");
        foreach (var (name, text) in Embedded(Schemas).Select(file => (Name: $"{SchemaFolder}/{file.Name}", file.Text))
            .Concat(Embedded(Example).Select(file => (Name: file.Name.Replace("FIRST", first, StringComparison.Ordinal).Replace("SECOND", second, StringComparison.Ordinal), Text: Filled(file.Text))))
            .OrderBy(file => file.Name == "journal.yaml")
            .ThenBy(file => file.Name, StringComparer.Ordinal))
        {
            SafeFile.TryCreate(Path.Combine(folder, name.Replace('/', Path.DirectorySeparatorChar)), text);
            written.Add(name);
        }

        return written;
    }

    // The files built in below a folder, by name.
    private static IReadOnlyList<(string Name, string Text)> Embedded(string folder)
    {
        var assembly = typeof(NewJournal).Assembly;
        return
        [
            .. assembly.GetManifestResourceNames()
                .Select(name => (Full: name, Name: name.Replace('\\', '/')))
                .Where(one => one.Name.StartsWith(folder, StringComparison.Ordinal))
                .OrderBy(one => one.Name, StringComparer.Ordinal)
                .Select(one =>
                {
                    using var reader = new StreamReader(assembly.GetManifestResourceStream(one.Full)!);
                    return (one.Name[folder.Length..], reader.ReadToEnd());
                }),
        ];
    }

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
