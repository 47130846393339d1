using System.Security.Cryptography;
using System.Text;
using Journal.Core.Writing.Texts;

namespace Journal.Bench.Texts;

/// <summary>The journal's text files by ids of ours: no path comes from a browser.</summary>
internal static class TextFiles
{
    private const int LettersOfId = 24;

    /// <summary>The id of a file, which is part of its address.</summary>
    public static string IdOf(string file) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(file)))[..LettersOfId];

    /// <summary>The file of an id; null where the journal has none.</summary>
    public static JournalFile? Find(string folder, string id) => JournalFiles.Of(folder).FirstOrDefault(file => IdOf(file.File) == id);
}
