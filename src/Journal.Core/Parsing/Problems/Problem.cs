using Journal.Core.Model;

namespace Journal.Core.Parsing.Problems;

/// <summary>Something in the maker's files that needs a hand: what, where, and what to do.</summary>
public sealed record Problem(ProblemKind Kind, Place Place, string Message, string Remedy)
{
    /// <summary>What it stops.</summary>
    public Severity Severity => Kind.Severity;
}
