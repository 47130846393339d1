using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>The time that went into one of several things: an operation, a kind of time, a week.</summary>
/// <typeparam name="T">What the time is told for.</typeparam>
/// <param name="What">The thing.</param>
/// <param name="Minutes">The time; 0 where a share came to less than a minute.</param>
public sealed record TimeOf<T>(T What, Minutes Minutes);
