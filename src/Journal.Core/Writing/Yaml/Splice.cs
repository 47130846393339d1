using System.Text;

namespace Journal.Core.Writing.Yaml;

/// <summary>A piece of text taken out and another put in its place.</summary>
/// <param name="Start">Where it begins, in UTF-16 units.</param>
/// <param name="Length">How much is taken out; 0 where something is only put in.</param>
/// <param name="Text">What is put in.</param>
internal readonly record struct Splice(int Start, int Length, string Text)
{
    /// <summary>Something put in at a place.</summary>
    public static Splice At(int place, string text) => new(place, 0, text);

    /// <summary>The same in a longer text that has so much in front.</summary>
    public Splice Behind(int front) => this with { Start = Start + front };

    /// <summary>A text with all of them; they may not overlap. Of two at one place the first comes first.</summary>
    public static string Apply(string text, IEnumerable<Splice> splices)
    {
        var (longer, at) = (new StringBuilder(text.Length + 64), 0);
        foreach (var splice in splices.OrderBy(splice => splice.Start))
        {
            longer.Append(text, at, splice.Start - at).Append(splice.Text);
            at = splice.Start + splice.Length;
        }

        return longer.Append(text, at, text.Length - at).ToString();
    }
}
