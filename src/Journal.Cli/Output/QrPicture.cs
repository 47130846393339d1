using System.Text;
using QRCoder;

namespace Journal.Cli.Output;

/// <summary>A QR code (ISO/IEC 18004) on the terminal: two rows of modules to a line, dark on light whatever the terminal's colours.</summary>
internal static class QrPicture
{
    /// <summary>The lines of the picture, its quiet zone included.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        return [.. Enumerable.Range(0, (rows.Count + 1) / 2).Select(line => Line(x => rows[2 * line][x], x => (2 * line) + 1 < rows.Count && rows[(2 * line) + 1][x], rows.Count))];
    }

    // Light modules are drawn and dark ones left out: terminals are dark more often than not, and scanners read either.
    private static string Line(Func<int, bool> upper, Func<int, bool> lower, int width)
    {
        var line = new StringBuilder();
        for (var x = 0; x < width; x++)
        {
            line.Append((upper(x), lower(x)) switch { (false, false) => '█', (false, true) => '▀', (true, false) => '▄', _ => ' ' });
        }

        return line.ToString();
    }
}
