namespace Journal.Core.Model;

/// <summary>
/// The name by which the maker's files point to a thing: lower-case words joined by hyphens.
/// The type argument says what it names, so that a part's id cannot stand where a tool's belongs.
/// </summary>
/// <remarks>Ordered and compared by the code units of its text, the same on every machine.</remarks>
/// <typeparam name="T">What the id names, such as <see cref="Part"/> or <see cref="Tool"/>.</typeparam>
public readonly record struct Id<T>(string Value) : IComparable<Id<T>>
{
    /// <summary>Whether a text has the form of an id: <c>a-z 0-9</c> in words joined by single hyphens, at most 100 characters.</summary>
    public static bool HasRightForm(string text)
    {
        if (text.Length is 0 or > 100 || text[0] == '-' || text[^1] == '-')
        {
            return false;
        }

        for (var i = 0; i < text.Length; i++)
        {
            var isWord = char.IsAsciiLetterLower(text[i]) || char.IsAsciiDigit(text[i]);
            if (!isWord && (text[i] != '-' || text[i - 1] == '-'))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(Id<T> other) => string.CompareOrdinal(Value, other.Value);

    /// <summary>The id as the maker writes it.</summary>
    public override string ToString() => Value;

    /// <summary>A readable title for a thing that has none: <c>gib-screw</c> reads “Gib screw”.</summary>
    public string ToTitle() => Titles.FromId(Value);
}
