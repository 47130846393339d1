using System.Text;

namespace Journal.Core.Parsing.Values;

/// <summary>Makes an id of a text, to propose it.</summary>
internal static class Slug
{
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
