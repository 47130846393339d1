using System.Text;

namespace Journal.Tests.Shared;

/// <summary>Random mutations of files that are well: pieces taken out, put in, repeated, of what YAML, Markdown and our own keys give a meaning.</summary>
internal static class Mutations
{
    private static readonly string[] Dictionary =
    [
        "---", "\n---\n", "- ", ": ", " #", "#10", "[", "]", "{", "}", "\"", "'", "|", ">", "&a", "*a", "<<: *a", "!!int", "? ", "\t", "\r", "\r\n", "\u2028", "\u0085", "\0", "\uFEFF", "🔩", "\\ud800", "~", "null",
        "hours: ", "jobs:\n  - ", "part: ", "whole", "{head: 2, quill: }", "19:10-21:55", "00:00-24:00", "2:75", "-1", "0", "99999999999", "1e309", "PT2H45M", "date: 2025-02-30", "0001-01-01", "9999-12-31",
        "[a](", "![a](../../x.gif)", "](part:", "](entry:2025-09-27)", "](lesson:%00)", "<script>", "<a href=javascript:x>", "| a | b |\n|---|---|\n", "```", "**", "_", "> ", "1. ", "    ", "[x]: part:head\n", "\\", "&#0;", "\u202E",
        "id: ", "mends: ", "finished: {gib-screw: 9}", "publish: after ", "photos: ", "a.gif", "..", "/", "guess: {low: ", "operations: {", "like: drill/", "away: 2026-01-01/", "covers: ", "at: \"", "title: ",
        "\u2029", "\uFEFF---", "--- |\n", "...\n", "%YAML 1.2\n", "%TAG ! tag:x,2000:\n", "!<tag:yaml.org,2002:str> ", "!!binary ", "!!set {", "&a [*a, *a]", "<<: [*a]", "|+9\n", ">-\n  ", "\"\\U0010FFFF\"", "\"\\x00\"", "'\n\n'", "? [a, b]\n: ", "{? a}", "0x1F", "0o17", "1_000", "1:2:3", "+.inf", ".nan", "1e-400", "2147483648", "-0", "0.0000000001", "１２", "٣", "½", "1h99m", "P1Y", "24:01", "9999-12-31/0001-01-01", "2026-W01", "2025-02-29", "0000-00-00", "+12025-01-01",
        "con", "NUL.md", "A", "a--b", "-", "drill/head", "../drill", "é", "e\u0301", "\u200F", "\u200D", "\u0000", "file:///etc/passwd", "C:\\x", "%2e%2e%2f", "//host/x", "javascript:", "[[", "]]", "](<", ">)", "[^1]", "[^1]: a\n", "![[", "***", "___", "~~~\n", "<!--", "-->", "<![CDATA[", "&amp;", "&#x110000;", "\t- ", "\n\n    ", "\n* * *\n", "===\n", "|:-:|", "\\|", "H7/g6", "25 ±0.01 mm", "1 1/2 in", "1/0 in", "M6 x 1", "-1 rpm", "400%",
    ];

    /// <summary>A text with one to four mutations, as bytes; one in twelve is no longer UTF-8, most likely.</summary>
    public static byte[] Of(string text, Random random)
    {
        for (var times = random.Next(1, 5); times > 0; times--)
        {
            var (at, length) = (random.Next(text.Length + 1), random.Next(1, 12));
            var end = Math.Min(text.Length, at + length);
            var piece = Dictionary[random.Next(Dictionary.Length)];
            text = random.Next(8) switch
            {
                0 => text[..at] + text[end..],
                1 => text[..at] + piece + text[at..],
                2 => text[..at] + piece + text[end..],
                3 => text[..at] + text[at..end] + text[at..],
                4 => text[..at] + (char)random.Next(1, 0x2100) + text[end..],
                5 => text[..at] + string.Concat(Enumerable.Repeat(piece, random.Next(2, 60))) + text[at..],
                6 => text[..at] + string.Concat(Enumerable.Repeat(piece, random.Next(8) == 0 ? random.Next(60, 20_000) : 1)) + text[end..],
                _ => text[..at],
            };
        }

        var bytes = Encoding.UTF8.GetBytes(text);
        if (bytes.Length > 0 && random.Next(12) == 0)
        {
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        }

        return bytes;
    }
}
