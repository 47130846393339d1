namespace Journal.Core.Writing.Names;

/// <summary>One of the parts that a part is split into.</summary>
/// <param name="Name">Its id.</param>
/// <param name="Weight">Its share of the time beside those of the others, 1 or more.</param>
public sealed record SplitPart(string Name, int Weight);
