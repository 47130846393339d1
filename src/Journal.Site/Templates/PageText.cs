using Scriban.Runtime;

namespace Journal.Site.Templates;

/// <summary>
/// What a template writes, in one piece of memory that the next page is written into too: a text of its own for every page
/// would be most of what publishing takes of memory.
/// </summary>
internal sealed class PageText : IScriptOutput
{
    private char[] letters = new char[16 * 1024];
    private int length;

    /// <summary>What was written so far; good until the next page.</summary>
    public ReadOnlySpan<char> Letters => letters.AsSpan(0, length);

    /// <summary>Begins anew.</summary>
    public void Clear() => length = 0;

    /// <inheritdoc/>
    public void Write(string text, int offset, int count)
    {
        if (letters.Length - length < count)
        {
            Array.Resize(ref letters, Math.Max(2 * letters.Length, length + count));
        }

        text.CopyTo(offset, letters, length, count);
        length += count;
    }

    /// <inheritdoc/>
    public ValueTask WriteAsync(string text, int offset, int count, CancellationToken cancellationToken)
    {
        Write(text, offset, count);
        return ValueTask.CompletedTask;
    }

    /// <summary>Nothing: the library asks for a text when a page is whole, and would make one of it all.</summary>
    public override string ToString() => "";
}
