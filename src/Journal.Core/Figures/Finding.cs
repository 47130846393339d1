using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>Something in the maker's files that a figure stumbled over.</summary>
/// <param name="Place">Where the reading or setting stands.</param>
/// <param name="Key">The key at fault, such as <c>required</c>.</param>
/// <param name="Fault">What is wrong; its offset counts within the value of the key.</param>
public sealed record Finding(Place Place, string Key, Fault Fault);
