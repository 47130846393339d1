using System.Security.Cryptography;
using System.Text.Json.Serialization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Requests;
using Journal.Core.Writing.Texts;
using Journal.Site.Serving;

namespace Journal.Bench.Texts;

/// <summary>What a script is told of a file that is being typed.</summary>
/// <param name="Problems">The problems of the file.</param>
/// <param name="Elsewhere">How many errors other files have, which keep the page from being made; 0 for none.</param>
/// <param name="Page">Its page of the site; null where errors stand in the way.</param>
/// <param name="Address">Where that page will be.</param>
internal sealed record TypedLook(IReadOnlyList<ProblemView> Problems, int Elsewhere, string? Page, string Address);

/// <summary>The same as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(TypedLook))]
internal sealed partial class TypedLookJson : JsonSerializerContext;

/// <summary>The journal's files as text: opened, looked at while they are typed, and saved.</summary>
internal sealed class TextRoutes(Workshop workshop)
{
    /// <summary>More than the journal reads of any file, in characters.</summary>
    private const int LongestText = 600_000;

    private const long LongestBody = (4L * LongestText) + Route.LongestForm;

    /// <summary>All that can be asked for.</summary>
    public IEnumerable<Route> All =>
    [
        Route.Get(Addresses.Files, asked => Reply.Page(workshop.Look.Fill("files", TextView.List(workshop, workshop.Frame(asked, "Files", Addresses.Files))))),
        Route.Get($"{Addresses.Files}/*", Open),
        Route.Post($"{Addresses.Files}/*", Save) with { LongestBody = LongestBody },
        Route.Post($"{Addresses.Typed}/*", Look) with { LongestBody = LongestBody },
        Route.Get($"{Addresses.Words}/*", Words),
        Route.Get($"{Addresses.Site}/**", SiteFile),
    ];

    private Reply Open(Asked asked) =>
        TextFiles.Find(workshop.Folder, asked.LastStep) is not { } file ? Reply.Nothing
        : OpenedText.Open(workshop.Folder, file.File) is not { } opened ? Reply.Page(workshop.Look.Fill("words", new WordsPage(workshop.Frame(asked, file.File, Addresses.Files), "This file cannot be read as text in UTF-8, or is too large. See `journal check`.")), 422)
        : Page(asked, file, opened.Text, opened.Digest, asked.Query("saved") is null ? null : new ToldView("Saved.", IsDone: true, Verdict: null), theirs: null, 200);

    private async Task<Reply> Save(Asked asked)
    {
        var form = await asked.ReadForm(LongestText);
        if (TextFiles.Find(workshop.Folder, asked.LastStep) is not { } file)
        {
            return Reply.Nothing;
        }

        var typed = form.Raw("text");
        var deed = new TextSaved(RandomNumberGenerator.GetHexString(32, lowercase: true), workshop.Clock.GetUtcNow(), file, form["seen"] ?? "", typed);
        var outcome = await workshop.Writer.Do(deed);
        return outcome.IsDone ? Reply.See($"{Addresses.Files}/{asked.LastStep}?saved=yes#told")
            : Page(asked, file, typed, deed.Saving.Now?.Digest ?? "", new ToldView(outcome.Said, IsDone: false, Verdict: null), deed.Saving.Now?.Text, 409);
    }

    private Reply Page(Asked asked, JournalFile file, string text, string seen, ToldView? told, string? theirs, int status) =>
        Reply.Page(workshop.Look.Fill("text", TextView.Of(workshop, workshop.Frame(asked, file.File, Addresses.Files), file, text) with { Seen = seen, Told = told, Theirs = theirs }), status);

    private async Task<Reply> Look(Asked asked)
    {
        var form = await asked.ReadForm(LongestText);
        if (TextFiles.Find(workshop.Folder, asked.LastStep) is not { } file)
        {
            return Reply.Nothing;
        }

        return Reply.Json(TextView.Look(workshop, file, form.Raw("text")), TypedLookJson.Default.TypedLook);
    }

    private Reply Words(Asked asked) =>
        TextFiles.Find(workshop.Folder, asked.LastStep) is { } file ? Reply.Json(WordLists.Of(workshop.Journal.Journal, file), WordListsJson.Default.WordLists) : Reply.Nothing;

    // The site's own files, so that a page beside a text looks as it will; nothing else of the journal's folder is among them.
    private Reply SiteFile(Asked asked) =>
        workshop.Preview.File(asked.Path[Addresses.Site.Length..], workshop.Today) is var (address, bytes)
            ? new Reply(200, ContentTypes.Of(address), bytes) { MayBeFramed = true }
            : Reply.Page("<!DOCTYPE html><html lang=\"en-GB\"><head><title>Not there yet</title></head><body><p>This page is not there yet.</p></body></html>", 404) with { MayBeFramed = true };
}
