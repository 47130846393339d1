namespace Journal.Bench.Common;

/// <summary>Where the pages are.</summary>
internal static class Addresses
{
    /// <summary>Tonight at the bench.</summary>
    public const string Tonight = "/tonight";

    /// <summary>The evening written up.</summary>
    public const string WriteUp = "/write-up";

    /// <summary>The pictures of entries.</summary>
    public const string Pictures = "/pictures";

    /// <summary>One picture.</summary>
    public const string Picture = "/picture";

    /// <summary>Plans with their guesses.</summary>
    public const string Plans = "/plans";

    /// <summary>Where a plan becomes a build.</summary>
    public const string Begin = "/begin";

    /// <summary>The journal's files as text.</summary>
    public const string Files = "/files";

    /// <summary>What a file looks like while it is typed.</summary>
    public const string Typed = "/typed";

    /// <summary>What the editor offers while a file is typed.</summary>
    public const string Words = "/words";

    /// <summary>The site, for previews beside a text.</summary>
    public const string Site = "/site";

    /// <summary>What is paired.</summary>
    public const string Phones = "/phones";

    /// <summary>Where a phone is paired.</summary>
    public const string Pairing = "/pair";
}
