using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>A hint in the account: what it hints at, its first token and the token behind it.</summary>
internal readonly record struct CueHit(Cue Cue, int First, int Next);
