using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Tests.PlainWords;

/// <summary>Numbers in English words by the rules of Unicode CLDR in <c>shared/spelled-numbers-checks.yaml</c>.</summary>
internal sealed class SpelledNumbers
{
    private readonly List<(int From, string Words)> rules;
    private readonly string and;

    private SpelledNumbers(YamlNode root)
    {
        rules = [.. ((YamlSequenceNode)root["cardinal"]).Select(rule => (int.Parse(rule[0].ToString(), CultureInfo.InvariantCulture), rule[1].ToString()))];
        and = ((YamlScalarNode)root["verbose-and"]).Value!;
        Digest = root["digest"].ToString();
        Ordinals = ((YamlMappingNode)root["ordinals"]).ToDictionary(pair => int.Parse(pair.Key.ToString(), CultureInfo.InvariantCulture), pair => pair.Value.ToString());
    }

    public static SpelledNumbers OfCldr { get; } = Load();

    /// <summary>The digest of the words that ICU gives for 0 to 10,000 in both sets.</summary>
    public string Digest { get; }

    /// <summary>Words for parts, by how many make a whole.</summary>
    public IReadOnlyDictionary<int, string> Ordinals { get; }

    /// <summary>The number in words; with “and” before what is left below a hundred where that is wanted.</summary>
    public string Say(int number, bool withAnd)
    {
        var at = rules.FindLastIndex(rule => rule.From <= number);
        var unit = rules[at].From < 100 ? 10 : rules[at].From < 1000 ? 100 : 1000;
        var left = number % unit;

        // Where nothing is left, the rule before it holds, as ICU's documentation says of rules with two substitutions.
        var (from, words) = left == 0 && number >= 100 ? rules[at - (rules[at].From % unit)] : rules[at];
        var said = words.Replace("<", from >= 100 ? Say(number / unit, withAnd) : "", StringComparison.Ordinal);
        return !said.Contains('>', StringComparison.Ordinal) ? said
            : withAnd && from >= 100 && left < 100 ? said.Replace(" >", and + Say(left, withAnd), StringComparison.Ordinal)
            : said.Replace(">", Say(left, withAnd), StringComparison.Ordinal);
    }

    /// <summary>All numbers from 0 to 10,000, a line each, in both sets: what the digest is of.</summary>
    public string DigestOfAll()
    {
        var all = new StringBuilder();
        foreach (var withAnd in new[] { false, true })
        {
            for (var number = 0; number <= 10_000; number++)
            {
                all.Append(Say(number, withAnd)).Append('\n');
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all.ToString())));
    }

    private static SpelledNumbers Load()
    {
        using var reader = new StreamReader(Path.Combine(AppContext.BaseDirectory, "shared", "spelled-numbers-checks.yaml"));
        var yaml = new YamlStream();
        yaml.Load(reader);
        return new(yaml.Documents[0].RootNode);
    }
}
