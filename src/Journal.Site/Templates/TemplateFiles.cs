using System.Reflection;

namespace Journal.Site.Templates;

/// <summary>
/// The files of the look: our own, which the program carries, or a maker's copy of them. Templates lie in
/// <c>pages/</c> and <c>pieces/</c>; all else is copied into the site as it is.
/// </summary>
public sealed class TemplateFiles
{

    // Links could lead round in a ring, or to what has no end.
    private static readonly EnumerationOptions NoLinks = new() { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint, IgnoreInaccessible = false };

    private readonly SortedDictionary<string, byte[]> files;

    private TemplateFiles(SortedDictionary<string, byte[]> files) => this.files = files;

    /// <summary>Paths with <c>/</c>, in ordinal order.</summary>
    public IEnumerable<string> Paths => files.Keys;

    /// <summary>All files, in the order of their paths.</summary>
    internal IEnumerable<KeyValuePair<string, byte[]>> All => files;

    /// <summary>The files that become part of the site as they are.</summary>
    public IEnumerable<KeyValuePair<string, byte[]>> Plain => files.Where(file => !IsTemplate(file.Key));

    /// <summary>The look of a maker's folder; of none, the one that the program carries.</summary>
    /// <exception cref="TemplateException">The folder does not exist, or two names differ in case alone.</exception>
    public static TemplateFiles Of(string? folder) => folder is null ? Own() : From(folder);

    /// <summary>The look of the site that the program carries.</summary>
    public static TemplateFiles Own() => In(typeof(TemplateFiles).Assembly, "site-template");

    /// <summary>The files that an assembly carries in a folder.</summary>
    public static TemplateFiles In(Assembly assembly, string folder)
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.StartsWith($"{folder}/", StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            files.Add(name[(folder.Length + 1)..].Replace('\\', '/'), bytes.ToArray());
        }

        return new TemplateFiles(files);
    }

    /// <summary>A maker's own look: a copy of ours, changed. What the copy lacks is taken from ours; links and names with a dot first are left.</summary>
    /// <exception cref="TemplateException">The folder does not exist, or two names differ in case alone.</exception>
    public static TemplateFiles From(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new TemplateException($"There is no template folder {folder}. Copy site-template there and try again.");
        }

        var files = Own().files;
        foreach (var path in Directory.EnumerateFiles(folder, "*", NoLinks))
        {
            var name = Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');
            if (!name.Split('/').Any(step => step.StartsWith('.')))
            {
                // Pipes have no length; opening one could wait for ever.
                files[name] = new FileInfo(path).Length == 0 ? [] : File.ReadAllBytes(path);
            }
        }

        return AlikeIn(files.Keys) is ({ } one, { } other)
            ? throw new TemplateException($"{one} and {other} differ only in upper and lower case, which many systems cannot tell apart. Rename the one in {folder}, or use our spelling.")
            : new TemplateFiles(files);
    }

    private static (string One, string Other)? AlikeIn(IEnumerable<string> names)
    {
        var seen = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in names)
        {
            if (!seen.TryAdd(name, name))
            {
                return (seen[name], name);
            }
        }

        return null;
    }

    /// <summary>The text of a template; null where there is none of that name.</summary>
    public string? Text(string path) => files.TryGetValue(path, out var bytes) ? System.Text.Encoding.UTF8.GetString(bytes) : null;

    private static bool IsTemplate(string path) => path.StartsWith("pages/", StringComparison.Ordinal) || path.StartsWith("pieces/", StringComparison.Ordinal);
}
