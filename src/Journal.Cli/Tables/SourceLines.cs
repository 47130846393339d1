using System.Text;
using Journal.Core.Model;
using Journal.Core.Parsing.Text;
using Spectre.Console;

namespace Journal.Cli.Tables;

/// <summary>The lines of one of the maker's files, to show what a problem is about.</summary>
internal sealed class SourceLines
{
    // What is longer is not read either (file-too-large), and needs no line shown.
    private const long Largest = 1024 * 1024;
    private const char More = '…';
    private readonly string[] lines;

    private SourceLines(string[] lines) => this.lines = lines;

    /// <summary>The lines of a file; none where it cannot be read or is too large.</summary>
    public static SourceLines Of(string path)
    {
        try
        {
            var file = new FileInfo(path);
            // Links may lead to what has no end; pipes have no length, and opening one could wait for ever.
            return new SourceLines(file is { Exists: true, LinkTarget: null, Length: > 0 and <= Largest } ? File.ReadAllText(path, Encoding.UTF8).Split('\n') : []);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new SourceLines([]);
        }
    }

    /// <summary>The line of a place and a mark to stand under its column; null where the line says nothing.</summary>
    /// <param name="place">The place; columns count UTF-16 units from 1.</param>
    /// <param name="width">How many cells there are; a longer line is cut on both sides of the place.</param>
    public (string Line, string Mark)? Show(Place place, int width)
    {
        if (place.Line > lines.Length || string.IsNullOrWhiteSpace(lines[place.Line - 1]))
        {
            return null;
        }

        var line = Printable.Of(lines[place.Line - 1].TrimEnd());
        var at = Math.Clamp(place.Column - 1, 0, line.Length);
        var (from, to) = Window(line, at, width);
        var before = (from > 0 ? More.ToString() : "") + line[from..at];
        var shown = before + line[at..to] + (to < line.Length ? More.ToString() : "");
        return (shown, new string(' ', before.GetCellWidth()) + "^");
    }

    // The line from its start if the place is seen then; else with a third of the width before the place.
    private static (int From, int To) Window(string line, int at, int width)
    {
        var from = line[..at].GetCellWidth() < width * 2 / 3 ? 0 : at;
        var room = width / 3;
        while (from > 0 && from <= at && line[(from - 1)..at].GetCellWidth() < room)
        {
            from--;
        }

        var to = at;
        while (to < line.Length && line[from..(to + 1)].GetCellWidth() < width - 2)
        {
            to++;
        }

        return (Whole(line, from), Whole(line, to));
    }

    // Not through the middle of a letter of two units.
    private static int Whole(string line, int at) => at > 0 && at < line.Length && char.IsLowSurrogate(line[at]) ? at - 1 : at;
}
