namespace Journal.Site.Sending;

/// <summary>When a file goes: nothing is sent before all that it shows or leads to is there.</summary>
internal enum Turn
{
    /// <summary>Pictures, styles, scripts and all else that pages need.</summary>
    Pictures,

    /// <summary>Pages.</summary>
    Pages,

    /// <summary>The front page and what stands beside it at the top, feeds among them: what leads to the pages.</summary>
    FrontPageAndFeeds,
}

/// <summary>The turn of an address.</summary>
internal static class Turns
{
    /// <summary>Which turn a file has.</summary>
    public static Turn Of(string address)
    {
        var isTop = !address.Contains('/', StringComparison.Ordinal);
        return Path.GetExtension(address) switch
        {
            ".html" when !isTop => Turn.Pages,
            ".html" => Turn.FrontPageAndFeeds,
            ".xml" or ".json" or ".txt" when isTop => Turn.FrontPageAndFeeds,
            _ => Turn.Pictures,
        };
    }
}
