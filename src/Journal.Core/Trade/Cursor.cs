namespace Journal.Core.Trade;

/// <summary>
/// Walks through a short text from left to right. Characters that look alike on a drawing read alike: an en dash or a
/// minus sign is a hyphen, every diameter sign is <c>ø</c>, inch marks of all shapes are <c>"</c>. Each stands for
/// exactly one character, so a position is also the offset in the text as written.
/// </summary>
internal sealed class Cursor(string text)
{
    private readonly string text = string.Create(text.Length, text, (span, source) =>
    {
        for (var i = 0; i < span.Length; i++)
        {
            span[i] = Plain(source[i]);
        }
    });

    /// <summary>Where the next character stands, from 0.</summary>
    public int Position { get; set; }

    /// <summary>Whether nothing is left.</summary>
    public bool AtEnd => Position >= text.Length;

    /// <summary>The next character; NUL at the end.</summary>
    public char Next => At(0);

    /// <summary>What is left.</summary>
    public string Rest => text[Position..];

    /// <summary>The character a number of places ahead; NUL beyond the end.</summary>
    public char At(int ahead) => Position + ahead < text.Length ? text[Position + ahead] : '\0';

    /// <summary>Goes past blanks.</summary>
    public void SkipBlanks()
    {
        while (char.IsWhiteSpace(Next))
        {
            Position++;
        }
    }

    /// <summary>Takes a text if it comes next, small and capital letters alike.</summary>
    public bool Take(string expected)
    {
        if (!text.AsSpan(Position).StartsWith(expected, StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        Position += expected.Length;
        return true;
    }

    /// <summary>Takes a word if it comes next and no letter follows it.</summary>
    public bool TakeWord(string expected)
    {
        var start = Position;
        if (Take(expected) && !char.IsLetter(Next))
        {
            return true;
        }

        Position = start;
        return false;
    }

    /// <summary>Takes the run of characters that satisfy a condition; empty where none does.</summary>
    public string TakeWhile(Func<char, bool> condition)
    {
        var start = Position;
        while (!AtEnd && condition(Next))
        {
            Position++;
        }

        return text[start..Position];
    }

    private static char Plain(char written) => written switch
    {
        '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212' => '-',
        'Ø' or '⌀' or '∅' or 'φ' or 'Φ' => 'ø',
        '″' or '”' or '“' or '„' => '"',
        '⁄' or '∕' => '/',
        '×' or '✕' => 'x',
        'μ' => 'µ',
        _ when char.IsWhiteSpace(written) => ' ',
        _ => written,
    };
}
