using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json.Serialization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Requests;
using Journal.Bench.Slates;
using Journal.Bench.Texts;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Entries;
using Journal.Site.Pages;

namespace Journal.Bench.Pictures;

/// <summary>What a script is told of pictures that it sent.</summary>
/// <param name="Done">Whether they are saved.</param>
/// <param name="Said">A sentence for the maker.</param>
internal sealed record PicturesTold(bool Done, string Said);

/// <summary>The same as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PicturesTold))]
internal sealed partial class PicturesToldJson : JsonSerializerContext;

/// <summary>The pictures of entries: what they show, balloons, order, whether they are published, and in which entry.</summary>
internal sealed class PictureRoutes(Workshop workshop)
{
    /// <summary>An entry of a hundred pictures has some fields for each.</summary>
    private const int MostFields = 2000;

    private const long LongestBody = 1024 * 1024;

    /// <summary>All that can be asked for.</summary>
    public IEnumerable<Route> All =>
    [
        Route.Get(Addresses.Pictures, List),
        Route.Get($"{Addresses.Pictures}/*", Open),
        Route.Post($"{Addresses.Pictures}/*", Save) with { LongestBody = LongestBody },
        Route.Get($"{Addresses.Picture}/*", Picture),
    ];

    private IEnumerable<Entry> Entries => workshop.Journal.Journal.Entries.Where(entry => entry.Photos.Count > 0).OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.File, StringComparer.Ordinal);

    private Reply List(Asked asked) => Reply.Page(workshop.Look.Fill("pictures", new PicturesPage(
        workshop.Frame(asked, "Pictures", Addresses.Pictures),
        [
            .. Entries.Select(entry => new PictureEntryRow(
                AddressOf(entry), entry.Title, Show.PlainDate(entry.Date), Casing.Capital(Count.Of(entry.Photos.Count, "picture")),
                entry.Photos.Count(IsWordless) is > 0 and var count ? $"{count.ToString(CultureInfo.InvariantCulture)} without words" : null)),
        ])));

    private Reply Open(Asked asked) => Find(asked) is { } entry ? Page(asked, entry, asked.Query("saved") is null ? null : new ToldView("Saved.", IsDone: true, Verdict: null), null, 200) : Reply.Nothing;

    private Reply Picture(Asked asked) =>
        workshop.Journal.Journal.Entries.SelectMany(entry => entry.Photos).FirstOrDefault(photo => TextFiles.IdOf(photo.File) == asked.LastStep) is { } photo && workshop.Preview.Picture(photo.File, workshop.Today) is { } bytes
            ? new Reply(200, "image/webp", bytes) : Reply.Nothing;

    private async Task<Reply> Save(Asked asked)
    {
        var form = await asked.ReadForm(mostFields: MostFields);
        workshop.Journal.Forget(); // What was changed is held against the files as they are now.
        if (Find(asked) is not { } entry)
        {
            return Reply.Nothing;
        }

        Slates.Outcome outcome;
        try
        {
            outcome = await workshop.Writer.Do(DeedOf(form, entry));
        }
        catch (RefusedException e)
        {
            outcome = new Slates.Outcome(IsDone: false, e.Message);
        }

        return asked.IsByScript ? Reply.Json(new PicturesTold(outcome.IsDone, outcome.Said), PicturesToldJson.Default.PicturesTold, outcome.IsDone ? 200 : 422)
            : outcome.IsDone ? Reply.See($"{AddressOf(entry)}?saved=yes#told")
            : Page(asked, entry, new ToldView(outcome.Said, IsDone: false, Verdict: null), form, 422);
    }

    private Deed DeedOf(Form form, Entry entry)
    {
        var (id, now) = (RandomNumberGenerator.GetHexString(32, lowercase: true), workshop.Clock.GetUtcNow());
        if (form["move"] is { } move)
        {
            return Moved(form, entry, move, id, now);
        }

        var values = entry.Photos.SelectMany(photo => Values(form, photo, FileOf(entry, photo))).ToList();
        return new PicturesChanged(id, now, entry.File, values, Order(form, entry));
    }

    private PictureMoved Moved(Form form, Entry entry, string picture, string id, DateTimeOffset now)
    {
        var photo = entry.Photos.FirstOrDefault(one => TextFiles.IdOf(one.File) == picture) ?? throw new RefusedException("That picture is not in this entry any more.");
        var to = BuildOf(entry).Entries.FirstOrDefault(one => TextFiles.IdOf(one.File) == form[$"to-{picture}"] && one.Ref != entry.Ref) ?? throw new RefusedException("Choose the entry that the picture belongs to.");
        return new PictureMoved(id, now, entry.File, to.File, photo with { File = FileOf(entry, photo) });
    }

    // Only what was changed on the page is changed in the file; what someone else changed meanwhile stays.
    private static IEnumerable<PhotoValue> Values(Form form, Photo photo, string file)
    {
        var id = TextFiles.IdOf(photo.File);
        if (form[$"here-{id}"] is null)
        {
            yield break;
        }

        if (Changed("caption", photo.Caption ?? "") is { } caption)
        {
            yield return PhotoValue.Caption(file, caption);
        }

        if (Changed("alt", photo.Alt ?? "") is { } alt)
        {
            yield return PhotoValue.Alt(file, alt);
        }

        if (Changed("marks", MarkLines.Of(photo.Marks)) is { } marks)
        {
            yield return PhotoValue.Marks(file, MarkLines.Read(marks));
        }

        var isNever = form[$"never-{id}"] == "yes";
        if (isNever != (form[$"was-never-{id}"] == "yes") && isNever != photo.Publish.IsNever)
        {
            yield return PhotoValue.Never(file, isNever);
        }

        string? Changed(string field, string now)
        {
            var (typed, was) = (Plain(form.Raw($"{field}-{id}")), Plain(form.Raw($"was-{field}-{id}")));
            return typed == was || typed == now ? null
                : was == now ? typed
                : throw new RefusedException($"{Path.GetFileName(file)}: this was changed elsewhere after you opened the page; it now says “{now}”. Nothing was saved. Copy what you typed, then load the page again.");
        }
    }

    private IReadOnlyList<string>? Order(Form form, Entry entry)
    {
        var known = entry.Photos.ToDictionary(photo => TextFiles.IdOf(photo.File), photo => FileOf(entry, photo), StringComparer.Ordinal);
        var ids = (form["order"] ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries).Where(known.ContainsKey).ToList();
        if (form["up"] is { } up && ids.IndexOf(up) is > 0 and var at)
        {
            (ids[at - 1], ids[at]) = (ids[at], ids[at - 1]);
        }

        if (form["down"] is { } down && ids.IndexOf(down) is >= 0 and var place && place < ids.Count - 1)
        {
            (ids[place + 1], ids[place]) = (ids[place], ids[place + 1]);
        }

        return ids.SequenceEqual(known.Keys) || ids.Count < known.Count ? null : [.. ids.Select(id => known[id])];
    }

    private Reply Page(Asked asked, Entry entry, ToldView? told, Form? typed, int status)
    {
        var (all, build) = (Entries.ToList(), BuildOf(entry));
        var at = all.FindIndex(one => one.Ref == entry.Ref);
        string Said(string field, string id, string now) => typed is null ? now : typed.Raw($"{field}-{id}");
        return Reply.Page(
            workshop.Look.Fill("picture-entry", new PictureEntryPage
            {
                Frame = workshop.Frame(asked, entry.Title, Addresses.Pictures),
                Title = entry.Title,
                Id = TextFiles.IdOf(entry.File),
                Date = Show.LongDate(entry.Date),
                Told = told,
                Pictures = [.. entry.Photos.Select((photo, i) => (Photo: photo, Id: TextFiles.IdOf(photo.File), Number: i)).Select(one => new PictureForm(
                    one.Number, Path.GetFileName(one.Photo.File), one.Id,
                    Said("caption", one.Id, one.Photo.Caption ?? ""), Said("alt", one.Id, one.Photo.Alt ?? ""),
                    typed is null ? one.Photo.Publish.IsNever : typed[$"never-{one.Id}"] == "yes",
                    one.Photo.Publish.IsNever || one.Photo.Publish.AllowsOn(workshop.Today) ? null : "Published later, as the entry says.",
                    Said("marks", one.Id, MarkLines.Of(one.Photo.Marks))))],
                Entries = [.. build.Entries.Where(one => one.Ref != entry.Ref).OrderBy(one => Math.Abs(one.Date.DayNumber - entry.Date.DayNumber)).Select(one => new ChoiceView(TextFiles.IdOf(one.File), $"{Show.PlainDate(one.Date)} {one.Title}"))],
                Before = at > 0 ? WayTo(all[at - 1]) : null,
                After = at < all.Count - 1 ? WayTo(all[at + 1]) : null,
                Script = workshop.Look.AddressOf("pictures.js"),
            }),
            status);
    }

    private Entry? Find(Asked asked) => workshop.Journal.Journal.Entries.FirstOrDefault(entry => TextFiles.IdOf(entry.File) == asked.LastStep);

    private Build BuildOf(Entry entry) => workshop.Journal.Journal.Builds.Single(build => build.Id == entry.Build);

    private static Way WayTo(Entry entry) => new(AddressOf(entry), entry.Title, IsHere: false);

    private static string AddressOf(Entry entry) => $"{Addresses.Pictures}/{TextFiles.IdOf(entry.File)}";

    // From the build's folder, as entries name them.
    private string FileOf(Entry entry, Photo photo) =>
        BuildOf(entry).Folder is var folder && photo.File.StartsWith($"{folder}/", StringComparison.Ordinal) ? photo.File[(folder.Length + 1)..] : photo.File;

    private static bool IsWordless(Photo photo) => photo.Caption is null && photo.Alt is null;

    private static string Plain(string typed) => typed.ReplaceLineEndings("\n").Trim();
}
