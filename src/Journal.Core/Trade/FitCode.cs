using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Journal.Core.Trade;

/// <summary>
/// The code of a tolerance class in ISO 286: a letter, or two, for where the tolerance lies and a number for its width.
/// Capitals are for holes, small letters for shafts: <c>H7</c>, <c>js6</c>.
/// </summary>
/// <param name="Letter">The letter of the fundamental deviation: D to S or d to s.</param>
/// <param name="Grade">The standard tolerance grade: 4 to 13.</param>
public readonly record struct FitCode(string Letter, int Grade)
{
    /// <summary>The narrowest grade known here.</summary>
    public const int FinestGrade = 4;

    /// <summary>The widest grade known here.</summary>
    public const int CoarsestGrade = 13;

    /// <summary>Whether it is for a hole.</summary>
    public bool IsHole => char.IsAsciiLetterUpper(Letter[0]);

    /// <summary>Reads a code such as <c>H7</c>.</summary>
    public static bool TryParse(string text, out FitCode code, [NotNullWhen(false)] out Fault? fault)
    {
        code = default;
        var written = new string([.. text.TakeWhile(char.IsAsciiLetter)]);
        var letter = written.Length > 0 && char.IsAsciiLetterUpper(written[0]) ? written.ToUpperInvariant() : written;
        if (!Fits.Letters.Contains(letter))
        {
            fault = new(
                FaultCode.UnknownFitLetter,
                WhatOfLetter(letter),
                "Holes have D, E, F, G, H, J, JS, K, M, N, P, R or S; shafts the same in small letters.",
                0);
            return false;
        }

        var isNumber = int.TryParse(text.AsSpan(letter.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var grade);
        if (!isNumber || grade is < FinestGrade or > CoarsestGrade)
        {
            fault = new(
                FaultCode.UnknownFitGrade,
                $"`{text[letter.Length..]}` is not a known tolerance grade.",
                "Use a grade from 4 to 13, or write the limits: `12 +0.018/0`.",
                letter.Length);
            return false;
        }

        (code, fault) = (new(letter, grade), null);
        return true;
    }

    /// <summary>The code as a drawing writes it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Letter}{Grade}");

    /// <summary>ISO 286 leaves out I, L, O, Q and W, which are read for other characters; the rest lie beyond D to S.</summary>
    private static string WhatOfLetter(string letter) => letter.ToUpperInvariant() switch
    {
        "I" or "L" or "O" or "Q" or "W" => $"ISO 286 has no fit with the letter `{letter}`.",
        "A" or "B" or "C" or "CD" or "T" or "U" or "V" or "X" or "Y" or "Z" or "ZA" or "ZB" or "ZC" =>
            $"Fits with the letter `{letter}` are outside D to S and not known here; write the limits.",
        _ => $"`{letter}` is not a letter used for fits.",
    };
}
