namespace Journal.Site.Serving;

/// <summary>The media types of the files that are served.</summary>
public static class ContentTypes
{
    /// <summary>The type of a file by the end of its name; that of bare bytes where the end is not known.</summary>
    public static string Of(string file) => Path.GetExtension(file) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".json" => "application/json",
        ".xml" => "application/xml",
        ".svg" => "image/svg+xml",
        ".jpg" => "image/jpeg",
        ".png" => "image/png",
        ".webp" => "image/webp",
        ".txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    };
}
