using Journal.Core.Model;

namespace Journal.Core.Estimating.Method;

/// <summary>Hours that an operation took on a part.</summary>
internal readonly record struct Work(Id<Operation> Operation, double Hours);

/// <summary>A finished part as the method sees it.</summary>
/// <param name="Name">The part as the maker names it: <c>build/part</c>.</param>
/// <param name="Hours">Hours taken for all its pieces; more than zero.</param>
/// <param name="Guess">Hours guessed before the work for all its pieces, more than zero; null where there was no guess.</param>
/// <param name="Work">The hours by operation; each more than zero.</param>
/// <param name="Quantity">How many pieces, at least 1.</param>
internal sealed record PastPart(string Name, double Hours, double? Guess, IReadOnlyList<Work> Work, int Quantity = 1);
