using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json.Serialization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Requests;
using Journal.Bench.Slates;
using Journal.Bench.Texts;
using Journal.Core.Writing.Texts;

namespace Journal.Bench.WriteUps;

/// <summary>What a script is told of a draft.</summary>
/// <param name="Text">The text; null where none could be made.</param>
/// <param name="File">Its file.</param>
/// <param name="Said">Why not; null where it could be made.</param>
internal sealed record DraftTold(string? Text, string? File, string? Said);

/// <summary>The same as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(DraftTold))]
internal sealed partial class DraftToldJson : JsonSerializerContext;

/// <summary>The evening written up: as the program understood it, as text, and saved.</summary>
internal sealed class WriteUpRoutes(Workshop workshop)
{
    /// <summary>An evening of many remarks has a field for each thing that was understood of them.</summary>
    private const int MostFields = 1000;

    private const int LongestText = 600_000;
    private const long LongestBody = (4L * LongestText) + Route.LongestForm;

    /// <summary>All that can be asked for.</summary>
    public IEnumerable<Route> All =>
    [
        Route.Get(Addresses.WriteUp, Begin),
        Route.Post(Addresses.WriteUp, Save) with { LongestBody = LongestBody },
        Route.Post($"{Addresses.WriteUp}/draft", Draft) with { LongestBody = LongestBody },
        Route.Post($"{Addresses.WriteUp}/look", Look) with { LongestBody = LongestBody },
        Route.Get($"{Addresses.WriteUp}/words", Words),
    ];

    private Reply Begin(Asked asked)
    {
        var isAnother = asked.Query("another") is not null;
        var (now, evening) = Evening(Date(asked.Query("evening")), isAnother);
        if (evening is null)
        {
            return Page(asked, now, null, null, "There is no build to write of. Add one with `journal add build`.", null, 200);
        }

        var fields = WriteUpFields.Offer(evening);
        var (draft, why) = Drafted(evening, fields);
        return Page(asked, now, evening, WriteUpPages.Of(workshop, now, evening, isAnother, fields, draft, null), Running(now, evening), why is null ? null : new ToldView(why, IsDone: false, Verdict: null), 200);
    }

    // Without a script the page is made anew; with one only the text changes.
    private async Task<Reply> Draft(Asked asked)
    {
        var form = await asked.ReadForm(LongestText, MostFields);
        var (now, evening, isAnother) = Evening(form);
        if (evening is null)
        {
            return Reply.Nothing;
        }

        var fields = WriteUpFields.Read(form, evening);
        var (draft, why) = Drafted(evening, fields);
        return asked.IsByScript
            ? Reply.Json(new DraftTold(draft?.Entry.Text, draft?.Entry.File, why), DraftToldJson.Default.DraftTold)
            : Page(asked, now, evening, WriteUpPages.Of(workshop, now, evening, isAnother, fields, draft, draft is null ? form.Raw("text") : null), Running(now, evening), why is null ? null : new ToldView(why, IsDone: false, Verdict: null), why is null ? 200 : 422);
    }

    private async Task<Reply> Look(Asked asked)
    {
        var form = await asked.ReadForm(LongestText, MostFields);
        var (_, evening, _) = Evening(form);
        return evening is not null && Drafted(evening, WriteUpFields.Read(form, evening)).Draft is { } draft
            ? Reply.Json(WriteUpPages.Look(workshop, evening, draft.Entry.File, form.Raw("text")), TypedLookJson.Default.TypedLook)
            : Reply.Json(new TypedLook([], 0, null, ""), TypedLookJson.Default.TypedLook);
    }

    private Reply Words(Asked asked) => Evening(Date(asked.Query("evening")), isAnother: false) is (_, { } evening)
        ? Reply.Json(WordLists.Of(evening.Journal, new JournalFile("", JournalFileKind.Entry, evening.Build.Id.Value)), WordListsJson.Default.WordLists)
        : Reply.Nothing;

    private async Task<Reply> Save(Asked asked)
    {
        var form = await asked.ReadForm(LongestText, MostFields);
        var (now, evening, isAnother) = Evening(form);
        if (evening is null)
        {
            return Reply.Nothing;
        }

        var (fields, typed) = (WriteUpFields.Read(form, evening), form.Raw("text"));
        var (draft, why) = Drafted(evening, fields);
        if (draft is not null && Running(now, evening) is { } running)
        {
            why = running;
        }
        else if (draft is not null)
        {
            var outcome = await workshop.Writer.Do(new EveningSaved(RandomNumberGenerator.GetHexString(32, lowercase: true), workshop.Clock.GetUtcNow(), evening, draft, form["seen"] ?? "", form["noted"] ?? "", typed));
            if (outcome.IsDone)
            {
                return Reply.See($"{Addresses.Files}/{TextFiles.IdOf(draft.Entry.File)}?saved=yes#told");
            }

            why = outcome.Said;
        }

        return Page(asked, now, evening, WriteUpPages.Of(workshop, now, evening, isAnother, fields, draft, typed), Running(now, evening), new ToldView(why!, IsDone: false, Verdict: null), 409);
    }

    private Reply Page(Asked asked, BenchNow now, EveningToWrite? evening, WriteUpView? view, string? trouble, ToldView? told, int status) =>
        Reply.Page(workshop.Look.Fill("write-up", new WriteUpPage
        {
            Frame = workshop.Frame(asked, "Write up", Addresses.WriteUp),
            Trouble = trouble ?? workshop.Trouble,
            Told = told,
            Others = WriteUpPages.Others(now, evening),
            Writing = view,
        }), status);

    private (BenchNow Now, EveningToWrite? Evening, bool IsAnother) Evening(Form form)
    {
        var isAnother = form["another"] == "yes";
        var (now, evening) = Evening(Date(form["evening"]), isAnother);
        return (now, evening, isAnother);
    }

    private static DateOnly? Date(string? text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    private (BenchNow Now, EveningToWrite? Evening) Evening(DateOnly? date, bool isAnother)
    {
        var now = workshop.Now();
        return (now, EveningToWrite.Of(now, workshop.Folder, date <= now.Evening ? date : null, isAnother));
    }

    private static (Drafted? Draft, string? Why) Drafted(EveningToWrite evening, WriteUpFields fields)
    {
        try
        {
            return (Drafting.Of(evening, fields), null);
        }
        catch (RefusedException e)
        {
            return (null, e.Message);
        }
    }

    // A stint's job comes into the entry when it ends.
    private static string? Running(BenchNow now, EveningToWrite evening) =>
        now.Slate.Stint is { } stint && now.Clock.Evening(stint.Began) == evening.Evening && stint.Build == evening.Build.Id.Value ? "The switch is on. End the stint on the page Tonight first; its hours then stand here." : null;
}
