namespace Journal.Core.PlainWords.Tokens;

/// <summary>What a token is.</summary>
internal enum TokenKind
{
    /// <summary>Letters, with the apostrophes inside them.</summary>
    Word,

    /// <summary>Figures, with a decimal point perhaps.</summary>
    Number,

    /// <summary>One sign.</summary>
    Mark,

    /// <summary>The end of a line.</summary>
    Break,
}

/// <summary>A word, number or sign of an account.</summary>
/// <param name="Start">Its first UTF-16 unit.</param>
/// <param name="End">The unit behind its last.</param>
/// <param name="Text">In lower case, apostrophes made plain.</param>
/// <param name="Kind">What it is.</param>
/// <param name="IsGlued">Whether nothing, or a hyphen alone, stands between it and the token before.</param>
/// <param name="IsCapital">Whether it was written with a capital first.</param>
internal sealed record Token(int Start, int End, string Text, TokenKind Kind, bool IsGlued, bool IsCapital)
{
    /// <summary>The word that it stands for where it is a slip of a known name; else its own text.</summary>
    public string Meant { get; set; } = Text;
}
