using Journal.Core.PlainWords;

namespace Journal.Core.Writing.Told;

/// <summary>Something that was said and is not written as a key. It stands in the text all the same.</summary>
/// <param name="What">What it is, such as <c>reading bore 0.75 in</c>.</param>
/// <param name="Why">Why not, as a sentence without its full stop.</param>
/// <param name="Words">Where it was said; null where the words are several.</param>
public sealed record LeftOut(string What, string Why, Span? Words);
