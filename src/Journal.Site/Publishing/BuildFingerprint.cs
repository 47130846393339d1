using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;
using Journal.Site.Templates;

namespace Journal.Site.Publishing;

/// <summary>What a site's look follows from beside the journal: this very program and the maker's own templates.</summary>
internal static class BuildFingerprint
{
    /// <summary>The mark of the program with its own templates, or with those of a folder.</summary>
    /// <exception cref="TemplateException">The folder does not exist.</exception>
    public static string Of(string? templates)
    {
        var program = $"{typeof(Entry).Module.ModuleVersionId:N}{typeof(BuildFingerprint).Module.ModuleVersionId:N}";
        return templates is null ? program : $"{program} {Digest(TemplateFiles.From(templates))}";
    }

    private static string Digest(TemplateFiles files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (path, bytes) in files.All)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}\0{bytes.Length}\0"));
            hash.AppendData(bytes);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
