using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Journal.Site.Templates;

namespace Journal.Site.Tests.Look;

/// <summary>
/// Contrast of every pair of colours that stand on each other, in the light and the dark scheme and on paper, by the
/// formula of WCAG 2.2 (W3C 2023): text at least 4.5 to 1 (1.4.3), lines and marks that tell something 3 to 1 (1.4.11).
/// </summary>
public sealed partial class ContrastTests
{
    private static readonly string Style = Encoding.UTF8.GetString(TemplateFiles.Own().Plain.First(file => file.Key == "style.css").Value);
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Schemes = [.. Root().Matches(Style).Select(block => Colours(block.Groups[1].Value))];

    private static readonly (string Text, string Ground)[] Texts =
    [
        ("ink", "paper"), ("ink", "ground"), ("ink", "squares"), ("ink", "brass-wash"), ("ink", "blue-wash"), ("ink", "code"),
        ("pencil", "paper"), ("pencil", "ground"), ("pencil", "squares"), ("pencil", "blue-wash"), ("pencil", "brass-wash"), ("pencil", "code"),
        ("blue", "paper"), ("blue", "ground"), ("blue", "squares"), ("blue", "blue-wash"), ("blue", "code"), ("blue-deep", "paper"), ("blue-deep", "blue-wash"),
        ("brass", "paper"), ("brass", "brass-wash"), ("brass", "blue-wash"), ("paper", "blue"), ("paper", "blue-deep"), ("paper", "ink"),
    ];

    private static readonly (string Mark, string Ground)[] Marks =
        [("line", "paper"), ("line", "ground"), ("brass-line", "paper"), ("brass-line", "brass-wash"), ("blue", "paper"), ("blue", "blue-wash"), ("ink", "paper"), ("brass", "paper"), ("brass", "brass-wash")];

    public static TheoryData<int> EveryScheme => [0, 1, 2];

    [Fact]
    public void Schemes_OfTheStyleSheet_AreLightDarkAndPaper() => Assert.Equal(3, Schemes.Count);

    [Theory]
    [MemberData(nameof(EveryScheme))]
    public void Text_OnEveryGround_CanBeRead(int scheme)
    {
        foreach (var (text, ground) in Texts)
        {
            Assert.True(Contrast(scheme, text, ground) >= 4.5, Told(scheme, text, ground));
        }
    }

    [Theory]
    [MemberData(nameof(EveryScheme))]
    public void Mark_OnEveryGround_CanBeSeen(int scheme)
    {
        foreach (var (mark, ground) in Marks)
        {
            Assert.True(Contrast(scheme, mark, ground) >= 3, Told(scheme, mark, ground));
        }
    }

    [Fact]
    public void Colours_OfTextAndMarksInTheStyleSheet_AreAllChecked()
    {
        var used = Painted().Matches(Style).Select(found => found.Groups[1].Value).Distinct();
        var ornament = new[] { "rule", "squares" }; // Thin rules between rows and the squares of the ground tell nothing.

        Assert.Empty(used.Except(Texts.Select(pair => pair.Text)).Except(Marks.Select(pair => pair.Mark)).Except(Texts.Select(pair => pair.Ground)).Except(ornament));
    }

    // The definition's own ends: black on white is 21 to 1, a colour on itself 1 to 1.
    [Theory]
    [InlineData("#000000", "#ffffff", 21)]
    [InlineData("#777777", "#777777", 1)]
    public void Ratio_OfKnownPairs_IsAsDefined(string one, string other, double expected) => Assert.Equal(expected, Ratio(one, other), 3);

    private static double Contrast(int scheme, string one, string other) => Ratio(Colour(scheme, one), Colour(scheme, other));

    private static string Colour(int scheme, string name) => Schemes[scheme].TryGetValue(name, out var colour) ? colour : Schemes[0][name];

    private static string Told(int scheme, string one, string other) =>
        string.Create(CultureInfo.InvariantCulture, $"{one} on {other} has {Contrast(scheme, one, other):0.00} to 1 in scheme {scheme}");

    // WCAG 2.2, “contrast ratio” and “relative luminance”.
    private static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour) => 0.2126 * Channel(colour, 1) + 0.7152 * Channel(colour, 3) + 0.0722 * Channel(colour, 5);

    private static double Channel(string colour, int at)
    {
        var share = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    private static Dictionary<string, string> Colours(string block) => Property().Matches(block).ToDictionary(
        found => found.Groups[1].Value,
        found => found.Groups[2].Value is { Length: 4 } brief ? "#" + string.Concat(brief.Skip(1).Select(digit => $"{digit}{digit}")) : found.Groups[2].Value);

    [GeneratedRegex(@":root \{([^}]*)\}")]
    private static partial Regex Root();

    [GeneratedRegex("--([a-z-]+):\\s*(#[0-9a-f]{6}|#[0-9a-f]{3});")]
    private static partial Regex Property();

    [GeneratedRegex(@"(?:^|[\s;{])(?:color|fill|stroke|border(?:-[a-z]+)?(?:-color)?|outline):[^;}]*var\(--([a-z-]+)\)")]
    private static partial Regex Painted();
}
