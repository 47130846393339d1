namespace Journal.Site.Publishing;

/// <summary>What a publish follows from, looked at before anything is read.</summary>
/// <param name="Begun">When (UTC).</param>
/// <param name="Look">The program and templates.</param>
/// <param name="Folder">The journal's folder, in full.</param>
/// <param name="Today">The day of publishing.</param>
/// <param name="Sources">The journal's files; null where they cannot be looked through.</param>
internal sealed record Survey(DateTime Begun, string Look, string Folder, DateOnly Today, JournalFiles? Sources)
{
    /// <summary>Looks at the journal and the templates of an order.</summary>
    /// <exception cref="Templates.TemplateException">The folder of templates does not exist.</exception>
    public static Survey Of(PublishOrder order) =>
        new(DateTime.UtcNow, BuildFingerprint.Of(order.Template), Path.GetFullPath(order.Folder), order.Today, FileStamps.OfJournal(order.Folder));

    /// <summary>Whether all is as it was for the site that a record tells of.</summary>
    public bool IsAsIn(PublishRecord record) =>
        Sources is { HoldsLinks: false } && record.IsAllSeen && record.Look == Look && record.Folder == Folder
        && Today >= record.Today && Today < record.SameUntil && !record.ChangesTo(Sources.Stamps).Any();
}
