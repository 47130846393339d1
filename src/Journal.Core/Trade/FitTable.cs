using System.Globalization;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Trade;

/// <summary>
/// The tables of <c>shared/fits.yaml</c>, which says how they are to be used. Only tolerances, fundamental deviations and
/// delta are tabled; the other limit follows from the grade (ISO 286-1:2010).
/// </summary>
internal sealed class FitTable
{
    private readonly Dictionary<string, IReadOnlyList<decimal?>> bounds;
    private readonly Dictionary<int, IReadOnlyList<decimal?>> grades;
    private readonly Dictionary<int, IReadOnlyList<decimal?>> delta;
    private readonly Dictionary<string, IReadOnlyList<FitRule>> rules;
    private readonly IReadOnlyList<FitException> exceptions;
    private readonly IReadOnlyList<FitException> notUsed;

    private FitTable(YamlNode root)
    {
        bounds = root.Get("bounds").Pairs().ToDictionary(pair => pair.Key, pair => pair.Value.Numbers());
        grades = ByGrade(root.Get("grades"));
        delta = ByGrade(root.Get("delta"));
        rules = root.Get("shafts").Pairs().Concat(root.Get("holes").Pairs())
            .ToDictionary(pair => pair.Key, pair => (IReadOnlyList<FitRule>)[.. pair.Value.Items().Select(FitRule.From)]);
        exceptions = [.. root.Get("exceptions").Items().Select(FitException.From)];
        notUsed = [.. root.Get("not-used").Items().Select(FitException.From)];
    }

    /// <summary>The letters of holes and shafts.</summary>
    public IReadOnlyCollection<string> Letters => rules.Keys;

    /// <summary>Reads the table that is built into the program.</summary>
    public static FitTable Load() => new(SharedData.Load("fits.yaml"));

    /// <summary>The limit deviations of a size in millimetres; null where the standard has none.</summary>
    public LimitDeviations? Find(decimal size, FitCode code)
    {
        if (notUsed.Any(entry => entry.Covers(size, code)))
        {
            return null;
        }

        var rule = rules[code.Letter].FirstOrDefault(candidate => candidate.Grades.Holds(code.Grade));
        var tolerance = At(grades[code.Grade], "main", size);
        return rule is null || tolerance is null ? null : Limits(rule, size, code, tolerance.Value);
    }

    private LimitDeviations? Limits(FitRule rule, decimal size, FitCode code, decimal tolerance)
    {
        if (rule.Sets == LimitSet.Symmetric)
        {
            return new(-tolerance / 2, tolerance / 2);
        }

        var exception = exceptions.FirstOrDefault(entry => entry.Covers(size, code));
        var value = exception?.Value ?? (At(rule.Values, rule.Bounds, size) + (rule.Delta ? At(delta[code.Grade], "main", size) : 0));
        return value is not { } limit ? null
            : rule.Sets == LimitSet.Upper ? new(limit - tolerance, limit)
            : new(limit, limit + tolerance);
    }

    /// <summary>The value of the range that a size belongs to: over the bound before, up to and including its own.</summary>
    private decimal? At(IReadOnlyList<decimal?> values, string boundsName, decimal size)
    {
        var range = bounds[boundsName].Index().First(bound => size <= bound.Item).Index;
        return values[range];
    }

    private static Dictionary<int, IReadOnlyList<decimal?>> ByGrade(YamlNode node) =>
        node.Pairs().ToDictionary(pair => int.Parse(pair.Key, CultureInfo.InvariantCulture), pair => pair.Value.Numbers());
}

/// <summary>Which limit a rule gives.</summary>
internal enum LimitSet
{
    Upper,
    Lower,
    Symmetric,
}

/// <summary>Grades from one to another, both included.</summary>
internal readonly record struct GradeRange(int From, int To)
{
    /// <summary>Whether a tolerance grade lies in the range, both ends included.</summary>
    public bool Holds(int grade) => From <= grade && grade <= To;
}

/// <summary>One line of the table: the fundamental deviations of a letter for some grades.</summary>
internal sealed record FitRule(GradeRange Grades, LimitSet Sets, string Bounds, bool Delta, IReadOnlyList<decimal?> Values)
{
    /// <summary>Reads a rule of <c>shared/fits.yaml</c>.</summary>
    public static FitRule From(YamlNode node) => new(
        Range(node.Get("grades").Integers()),
        Enum.Parse<LimitSet>(node.Get("sets").Text(), ignoreCase: true),
        node.Find("bounds")?.Text() ?? "main",
        node.Find("delta")?.Text() == "true",
        node.Find("values")?.Numbers() ?? []);

    private static GradeRange Range(IReadOnlyList<int> ends) => new(ends[0], ends[1]);
}

/// <summary>A place in the table where the standard departs from its own rule.</summary>
internal sealed record FitException(string Letter, GradeRange Grades, decimal Over, decimal UpTo, decimal? Value)
{
    /// <summary>Whether it is for this size (mm; above the lower bound, up to the upper) and code.</summary>
    public bool Covers(decimal size, FitCode code) => Letter == code.Letter && Grades.Holds(code.Grade) && Over < size && size <= UpTo;

    /// <summary>Reads an exception of <c>shared/fits.yaml</c>.</summary>
    public static FitException From(YamlNode node)
    {
        var grades = node.Find("grades")?.Integers() ?? [(int)node.Get("grade").Number()!.Value];
        return new(
            node.Get("letter").Text(),
            new(grades[0], grades[^1]),
            node.Get("over").Number()!.Value,
            node.Get("up-to").Number()!.Value,
            node.Find("value")?.Number());
    }
}
