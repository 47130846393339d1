using Journal.Core.Model;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>A word for an operation in the account.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Form">The form of the verb.</param>
/// <param name="IsNoun">Whether it may as well name the work: “the boring”.</param>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token behind it.</param>
/// <param name="ParticleAt">Where its particle stands behind the object: “clocked it <em>in</em>”; else −1.</param>
internal sealed record OperationHit(Id<Operation> Operation, VerbForm Form, bool IsNoun, int First, int Next, int ParticleAt = -1);
