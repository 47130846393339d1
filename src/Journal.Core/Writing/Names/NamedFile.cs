using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>A file of the journal with the names in it.</summary>
/// <param name="File">The file, from the journal's folder.</param>
/// <param name="Makers">Its text.</param>
/// <param name="Yaml">Its YAML.</param>
/// <param name="Front">How much of the file stands before the YAML.</param>
/// <param name="Tree">The tree of the YAML.</param>
/// <param name="Uses">Every name in it.</param>
internal sealed record NamedFile(string File, MakersFile Makers, string Yaml, int Front, SourceNode Tree, IReadOnlyList<NameUse> Uses)
{
    /// <summary>The whole text.</summary>
    public string Text => Makers.Text;

    /// <summary>An entry; null where its keys cannot be read.</summary>
    public static NamedFile? OfEntry(string file, MakersFile makers, string build, Func<string, bool> isPart)
    {
        if (FrontMatter.Split(makers.Text, file, new ProblemLog()) is not { } halves || SourceNode.Of(halves.Yaml) is not { } tree)
        {
            return null;
        }

        var front = makers.Text.IndexOf(halves.Yaml, makers.Text.IndexOf('\n', StringComparison.Ordinal) + 1, StringComparison.Ordinal);
        var body = new BodyReader(file, new ProblemLog()).Read(halves.Body, halves.BodyLine).Body;
        return new NamedFile(
            file,
            makers,
            halves.Yaml,
            front,
            tree,
            [.. new NamesInYaml(build, isPart, front).OfEntry(tree), .. NamesInText.Of(body, build, makers.Text.Length - halves.Body.Length)]);
    }

    /// <summary>A file that is YAML from end to end; null where it cannot be read.</summary>
    public static NamedFile? OfYaml(string file, MakersFile makers, Func<SourceNode, IReadOnlyList<NameUse>> names) =>
        SourceNode.Of(makers.Text) is { } tree ? new NamedFile(file, makers, makers.Text, 0, tree, names(tree)) : null;

    /// <summary>Whether a name stands in the file just as it reads, and can be taken out.</summary>
    public bool SaysPlainly(NameUse use) =>
        use.Start >= 0 && use.Start + use.Length <= Text.Length && string.CompareOrdinal(Text, use.Start, use.Name, 0, use.Length) == 0;

    /// <summary>The line that a place stands on, from 1.</summary>
    public int LineOf(int place) => Text.AsSpan(0, place).Count('\n') + 1;

    /// <summary>The file with pieces of its text changed.</summary>
    public FileChange With(IEnumerable<Splice> splices) => new(File, Text, Splice.Apply(Text, splices), Makers.HasMark);
}
