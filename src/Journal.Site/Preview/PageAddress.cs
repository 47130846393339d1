namespace Journal.Site.Preview;

/// <summary>Which page of a site a request means.</summary>
internal static class PageAddress
{
    /// <summary>The address within the site; null where it would lead out of the site.</summary>
    /// <param name="target">The request target as sent, still encoded.</param>
    public static string? Of(string target)
    {
        var path = Uri.UnescapeDataString(target.Split('?', '#')[0]);
        if (!path.StartsWith('/') || path.Contains('\0', StringComparison.Ordinal) || path.Contains('\\', StringComparison.Ordinal)
            || path.Split('/').Any(step => step.StartsWith('.')))
        {
            return null;
        }

        return path.EndsWith('/') ? $"{path[1..]}index.html" : path[1..];
    }
}
