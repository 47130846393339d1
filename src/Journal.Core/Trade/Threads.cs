using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>
/// Thread designations: those of <c>shared/threads.yaml</c> in every spelling listed there, and others of the same
/// families (another pitch of ISO 261, a larger Whitworth size) by their form.
/// </summary>
public static partial class Threads
{
    private static readonly Lazy<Dictionary<string, ScrewThread>> Table = new(Load);

    /// <summary>Whether a text is meant as a thread: it is one of the table, or has the form of one.</summary>
    public static bool LooksLikeOne(string text)
    {
        var plain = Plain(text);
        return Table.Value.ContainsKey(Key(plain)) || Form().IsMatch(plain);
    }

    /// <summary>Reads a designation such as <c>M6x1-6H</c>, <c>1/4-20 UNC</c>, <c>2 BA</c>, <c>1/4 x 40 ME</c>.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out ScrewThread? thread, [NotNullWhen(false)] out Fault? fault)
    {
        var whole = Plain(text);
        if (!Table.Value.TryGetValue(Key(whole), out thread))
        {
            var (size, tolerance, isLeftHanded) = Split(whole);
            thread = Table.Value.TryGetValue(Key(size), out var known) ? known : ByForm(size);
            thread = thread is null ? null : thread with { Tolerance = tolerance, IsLeftHanded = isLeftHanded };
        }

        fault = thread is not null ? null : new(FaultCode.UnknownThread, $"`{text.Trim()}` is not a known thread.", Remedy(whole), 0);
        return thread is not null;
    }

    /// <summary>Takes the hand and the tolerance class off: <c>M6x1-6H LH</c> is <c>M6x1</c>, <c>6H</c>, left-handed.</summary>
    private static (string Size, string? Tolerance, bool IsLeftHanded) Split(string text)
    {
        var isLeftHanded = LeftHand().IsMatch(text);
        var rightHanded = LeftHand().Replace(text, "");
        var tolerance = ToleranceClass().Match(rightHanded);
        return tolerance.Success
            ? (rightHanded[..tolerance.Index], tolerance.Groups["class"].Value, isLeftHanded)
            : (rightHanded, null, isLeftHanded);
    }

    /// <summary>A thread that the table does not list, by its form; null where the table lists the size with another pitch.</summary>
    private static ScrewThread? ByForm(string size)
    {
        if (MetricForm().Match(size) is { Success: true } metric)
        {
            return ByMetricForm(metric, size);
        }

        if (InchForm().Match(size) is not { Success: true } inch || SameSize(inch).Any(known => known.ThreadsPerInch is not null))
        {
            return null;
        }

        var count = inch.Groups["tpi"];
        return new()
        {
            Designation = Tidy(size),
            Series = inch.Groups["series"].Value.ToUpperInvariant(),
            ThreadsPerInch = count.Success ? decimal.Parse(count.Value, CultureInfo.InvariantCulture) : null,
        };
    }

    /// <summary>Metric threads with their pitch; without one only the coarse threads of the table are meant.</summary>
    private static ScrewThread? ByMetricForm(Match form, string size)
    {
        var major = decimal.Parse(form.Groups["major"].Value, CultureInfo.InvariantCulture);
        var pitch = form.Groups["pitch"].Success ? decimal.Parse(form.Groups["pitch"].Value, CultureInfo.InvariantCulture) : 0;
        return pitch > 0 && pitch < major / 2
            ? new()
            {
                Designation = Tidy(size),
                Series = size.StartsWith('T') || size.StartsWith('t') ? "ISO metric trapezoidal" : "ISO metric",
                Major = new(major, LengthUnit.Millimetre),
                Pitch = pitch,
            }
            : null;
    }

    /// <summary>The threads of the table with the size and the series of a form, whatever their pitch.</summary>
    private static IEnumerable<ScrewThread> SameSize(Match inch)
    {
        var size = Key(inch.Groups["size"].Value);
        var series = Key(inch.Groups["series"].Value);
        return series == "me"
            ? []
            : Table.Value.Values.Distinct().Where(known =>
                InchForm().Match(known.Designation) is { Success: true } listed
                && Key(listed.Groups["size"].Value) == size
                && Key(listed.Groups["series"].Value) == series);
    }

    private static string Remedy(string text)
    {
        var near = InchForm().Match(text) is { Success: true } inch ? SameSize(inch).FirstOrDefault() : null;
        return near is null
            ? "Write it as the drawing does: `M6`, `M6x0.75`, `1/4-20 UNC`, `2 BA`, `1/4 x 40 ME`."
            : string.Create(CultureInfo.InvariantCulture, $"Check the threads to the inch; the table has `{near.Designation}` with {near.ThreadsPerInch}.");
    }

    /// <summary>All dashes and crosses alike, one blank between words.</summary>
    private static string Plain(string text) => Blanks().Replace(new Cursor(text).Rest, " ").Trim();

    private static string Tidy(string text) => Blanks().Replace(text, " ").Trim();

    private static string Key(string text) => text.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant().Replace('X', 'x');

    private static Dictionary<string, ScrewThread> Load()
    {
        var table = new Dictionary<string, ScrewThread>(StringComparer.Ordinal);
        foreach (var series in SharedData.Load("threads.yaml").Items())
        {
            var unit = series.Get("unit").Text() == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;
            foreach (var listed in series.Get("threads").Items())
            {
                var thread = new ScrewThread
                {
                    Designation = listed.Get("designation").Text(),
                    Series = series.Get("title").Text(),
                    Major = listed.Get("major").Number() is { } major ? new(major, unit) : null,
                    Pitch = listed.Find("pitch")?.Number(),
                    ThreadsPerInch = listed.Find("tpi")?.Number(),
                };
                table.TryAdd(Key(Plain(thread.Designation)), thread);
                foreach (var spelling in listed.Find("also")?.Items() ?? [])
                {
                    table.TryAdd(Key(Plain(spelling.Text())), thread);
                }
            }
        }

        return table;
    }

    /// <summary>What nobody writes but for a thread: <c>M6</c>, <c>Tr 12</c>, <c>G 1/4</c>, or the name of a series at the end.</summary>
    [GeneratedRegex(
        @"^(M ?\d|Tr ?\d|G ?\d|R[cp] ?\d|BA ?\d|#\d)|\d ?(UN|UNC|UNF|UNEF|UNS|BA|ME|BSW|Whitworth|Whit|BSF|BSP[PT]?|BSB|BSC|CEI|NPT|NPTF|NPS)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Form();

    /// <summary>ISO 261 and ISO 2902: the letter, the major diameter, a cross and the pitch.</summary>
    [GeneratedRegex(
        @"^(M|Tr) ?(?<major>\d{1,3}(\.\d{1,2})?) ?(x ?(?<pitch>\d{1,2}(\.\d{1,3})?))?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex MetricForm();

    /// <summary>Size, threads to the inch and series.</summary>
    [GeneratedRegex(
        @"^(?<size>#?\d{1,2}([ -]\d{1,2}/\d{1,2}|/\d{1,2})?) ?([x-] ?(?<tpi>\d{1,2}(\.\d)?))? ?(?<series>UNC|UNF|UNEF|UNS|UN|ME|BSW|Whitworth|Whit|BSF|BSPP|BSPT|BSP|BSB|BSC|CEI|NPTF|NPT|NPS)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InchForm();

    /// <summary>The tolerance class behind a hyphen: <c>6H</c>, <c>6g</c>, <c>2B</c>.</summary>
    [GeneratedRegex(@" ?- ?(?<class>\d[A-Ha-h](\d[A-Ha-h])?)$", RegexOptions.CultureInvariant)]
    private static partial Regex ToleranceClass();

    [GeneratedRegex(@"[ -]LH\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex LeftHand();

    [GeneratedRegex(@" {2,}", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();
}
