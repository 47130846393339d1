using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Parsing.Text;

namespace Journal.Core.Parsing.Problems;

/// <summary>A kind of problem: a line of <see cref="ProblemTable"/>.</summary>
public sealed class ProblemKind
{
    private readonly string text;
    private readonly string remedy;

    /// <summary>A line of the table. Text and remedy are format strings for the details of one problem.</summary>
    internal ProblemKind(string code, Severity severity, string text, string remedy)
    {
        (Code, Severity) = (code, severity);
        (this.text, this.remedy) = (text, remedy);
    }

    /// <summary>The lasting name of the kind, in words joined by hyphens.</summary>
    public string Code { get; }

    /// <summary>What it stops.</summary>
    public Severity Severity { get; }

    /// <summary>A problem of this kind.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="details">What text and remedy name, in the order of their numbered gaps.</param>
    public Problem At(Place place, params object[] details) => new(
        this,
        place,
        string.Format(CultureInfo.InvariantCulture, text, Clean(details)),
        string.Format(CultureInfo.InvariantCulture, remedy, Clean(details)).Trim());

    private static object[] Clean(object[] details) => [.. details.Select(detail => detail is string written ? Printable.Quoted(written) : detail)];
}
