namespace Journal.Bench.Common;

/// <summary>Where the pages are.</summary>
internal static class Addresses
{
    /// <summary>Tonight at the bench.</summary>
    public const string Tonight = "/tonight";

    /// <summary>What is paired.</summary>
    public const string Phones = "/phones";

    /// <summary>Where a phone is paired.</summary>
    public const string Pairing = "/pair";
}
