namespace Journal.Site.Sending;

/// <summary>When a file goes: nothing is sent before all that it shows or leads to is there.</summary>
internal enum UploadPhase
{
    /// <summary>Pictures, styles, scripts and all else that pages need.</summary>
    Pictures,

    /// <summary>Pages.</summary>
    Pages,

    /// <summary>The front page and what stands beside it at the top, feeds among them: what leads to the pages.</summary>
    FrontPageAndFeeds,
}

/// <summary>The phase of an address.</summary>
internal static class UploadPhases
{
    /// <summary>In which phase a file goes.</summary>
    public static UploadPhase Of(string address)
    {
        var isTop = !address.Contains('/', StringComparison.Ordinal);
        return Path.GetExtension(address) switch
        {
            ".html" when !isTop => UploadPhase.Pages,
            ".html" => UploadPhase.FrontPageAndFeeds,
            ".xml" or ".json" or ".txt" when isTop => UploadPhase.FrontPageAndFeeds,
            _ => UploadPhase.Pictures,
        };
    }
}
