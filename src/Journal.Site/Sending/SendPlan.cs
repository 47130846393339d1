namespace Journal.Site.Sending;

/// <summary>What a send has to do.</summary>
/// <param name="ToSend">The files to send in the order of their turns.</param>
/// <param name="ToDelete">The files to take away: pages first, so that none is left without its pictures.</param>
internal sealed record SendPlan(IReadOnlyList<string> ToSend, IReadOnlyList<string> ToDelete)
{
    /// <summary>The differences between a site and what lies at a destination.</summary>
    /// <param name="site">The site's files and their hashes.</param>
    /// <param name="there">Our files at the destination and their hashes; an empty hash for contents unknown.</param>
    public static SendPlan Between(IReadOnlyDictionary<string, string> site, IReadOnlyDictionary<string, string> there) => new(
        [.. site.Where(file => there.GetValueOrDefault(file.Key) != file.Value).Select(file => file.Key).OrderBy(UploadPhases.Of).ThenBy(address => address, StringComparer.Ordinal)],
        [.. there.Keys.Where(address => !site.ContainsKey(address)).OrderByDescending(UploadPhases.Of).ThenBy(address => address, StringComparer.Ordinal)]);
}
