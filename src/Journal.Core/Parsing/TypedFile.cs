namespace Journal.Core.Parsing;

/// <summary>A file of the journal as someone is typing it, before it is saved: the journal is read as if it had been.</summary>
/// <param name="File">The file, relative to the journal, with <c>/</c>; it need not be there yet.</param>
/// <param name="Text">Its text, without a byte-order mark.</param>
public sealed record TypedFile(string File, string Text);
