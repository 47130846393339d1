using System.Text;

namespace Journal.Core.Parsing.Values;

/// <summary>Makes an id of a text, to propose it.</summary>
internal static class Slug
{
    /// <summary>An id of at most 60 characters made from any text: lower-case letters, digits and hyphens; <c>a-name</c> where nothing is left.</summary>
    public static string Of(string text)
    {
        var slug = new StringBuilder();
        foreach (var letter in text)
        {
            if (char.IsAsciiLetterOrDigit(letter))
            {
                slug.Append(char.ToLowerInvariant(letter));
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }

        var made = slug.ToString().Trim('-');
        return made.Length == 0 ? "a-name" : made.Length > 60 ? made[..60].Trim('-') : made;
    }
}
