using System.Buffers;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Writing.Texts;

/// <summary>A word in the place of another, which puts a problem right.</summary>
/// <param name="Line">The line of the wrong word, from 1.</param>
/// <param name="Column">Its column, from 1, in UTF-16 units.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Word">The right word.</param>
public sealed record Mend(int Line, int Column, int Length, string Word)
{
    private static readonly SearchValues<char> WordEnds = SearchValues.Create(" \t,:[]{}()#\"'`");

    /// <summary>The mend of a problem; null where none is known, or the wrong word does not stand at the problem's place.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="text">The text of its file.</param>
    public static Mend? Of(Problem problem, string text)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (Suggestion.OfferedIn(problem.Remedy) is not { } word || LineOf(text, problem.Place.Line) is not { } line || problem.Place.Column > line.Length)
        {
            return null;
        }

        // Quotation marks stay.
        var start = problem.Place.Column - 1;
        start += line[start] is '"' or '\'' ? 1 : 0;
        var length = line.AsSpan(start).IndexOfAny(WordEnds) is >= 0 and var end ? end : line.Length - start;
        return length > 0 && Suggestion.Nearest(line.Substring(start, length), [word]) == word ? new Mend(problem.Place.Line, start + 1, length, word) : null;
    }

    private static string? LineOf(string text, int number) =>
        text.Split('\n') is var lines && number >= 1 && number <= lines.Length ? lines[number - 1].TrimEnd('\r') : null;
}
