using System.Net;

namespace Journal.Site.Templates;

/// <summary>
/// Text that is HTML already and is written as it is. Everything else that a template writes is escaped, so whatever
/// becomes one of these must have been made by us or gone through the sanitiser.
/// </summary>
public readonly record struct Html(string Markup)
{
    /// <summary>Nothing.</summary>
    public static Html Empty => new("");

    /// <summary>Whether there is nothing to write.</summary>
    public bool IsEmpty => string.IsNullOrEmpty(Markup);

    /// <summary>HTML for a plain text.</summary>
    public static Html Of(string text) => new(Escape(text));

    /// <summary>A text with the five characters escaped that HTML gives a meaning.</summary>
    public static string Escape(string text) => WebUtility.HtmlEncode(text);

    /// <inheritdoc/>
    public override string ToString() => Markup ?? "";
}
