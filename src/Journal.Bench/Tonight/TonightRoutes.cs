using System.Text.Json.Serialization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Requests;
using Journal.Bench.Slates;
using Journal.Core.Writing.Bench;
using Journal.Site.Photos;

namespace Journal.Bench.Tonight;

/// <summary>What a script is told of something that it sent.</summary>
/// <param name="Done">Whether it is kept, on the disk.</param>
/// <param name="Said">A sentence for the maker.</param>
/// <param name="Verdict">Of a size: how it lies; null for anything else.</param>
internal sealed record ToldScript(bool Done, string Said, VerdictView? Verdict);

/// <summary>Answers for scripts as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(ToldScript))]
internal sealed partial class ToldJson : JsonSerializerContext;

/// <summary>The page of tonight, and what is sent from it.</summary>
internal sealed class TonightRoutes(Workshop workshop)
{
    private const string Address = Addresses.Tonight;

    private const long LongestPicture = 40L * 1024 * 1024;
    private const int MostPicturesAtOnce = 12;

    /// <summary>All that can be asked for.</summary>
    public IEnumerable<Route> All =>
    [
        Route.Get(Address, Page),
        Route.Post($"{Address}/begin", asked => Do(asked, Begin)),
        Route.Post($"{Address}/pause", asked => Do(asked, Switch(Switching.Pause))),
        Route.Post($"{Address}/go-on", asked => Do(asked, Switch(Switching.GoOn))),
        Route.Post($"{Address}/end", asked => Do(asked, Switch(Switching.End))),
        Route.Post($"{Address}/drop", asked => Do(asked, Switch(Switching.Drop))),
        Route.Post($"{Address}/take-back", asked => Do(asked, (form, stamp, _) => [new TakenBack(stamp.Id, stamp.At, form["jot"] ?? "")])),
        Route.Post($"{Address}/picture", asked => Do(asked, Pictures)) with { LongestBody = LongestPicture + Route.LongestForm },
        .. JotForms.All.Select(form => Route.Post($"{Address}/{form.Key}", asked => Do(asked, (sent, stamp, now) => [Note(sent, stamp, form.Value(sent, now), now)]))),
    ];

    private Reply Page(Asked asked)
    {
        var now = workshop.Now();
        var jot = asked.Query("kept") is { } id ? now.Jots.FirstOrDefault(jot => jot.Id == id) : null;
        return Page(asked, jot is null ? null : new ToldView(jot.Text, IsDone: true, VerdictOf(jot.Id!, now)), 200);
    }

    private Reply Page(Asked asked, ToldView? told, int status)
    {
        var frame = workshop.Frame(asked, "Tonight", Address) with { Script = workshop.Look.AddressOf("tonight.js") };
        return Reply.Page(workshop.Look.Fill("tonight", TonightView.Of(workshop.Now(), frame, told, workshop.Trouble)), status);
    }

    // A form may hold several pictures, each a deed of its own; all else is one.
    private async Task<Reply> Do(Asked asked, Func<Form, Stamp, BenchNow, IReadOnlyList<Deed>> read)
    {
        var form = await asked.ReadForm();
        Outcome outcome;
        string id = "";
        try
        {
            var stamp = Stamp.Of(form, workshop.Clock.GetUtcNow());
            id = stamp.Id;
            outcome = await Do(read(form, stamp, workshop.Now()));
        }
        catch (RefusedException e)
        {
            outcome = new Outcome(IsDone: false, e.Message);
        }

        var status = outcome.IsDone ? 200 : 422;
        if (asked.IsByScript)
        {
            return Reply.Json(new ToldScript(outcome.IsDone, outcome.Said, outcome.IsDone ? VerdictOf(form["jot"] ?? id, workshop.Now()) : null), ToldJson.Default.ToldScript, status);
        }

        return outcome.IsDone ? Reply.See($"{Address}?kept={Uri.EscapeDataString(form["jot"] ?? id)}#told") : Page(asked, new ToldView(outcome.Said, IsDone: false, Verdict: null), status);
    }

    private async Task<Outcome> Do(IReadOnlyList<Deed> deeds)
    {
        var outcomes = await Task.WhenAll(deeds.Select(workshop.Writer.Do));
        return new Outcome(outcomes.All(outcome => outcome.IsDone), string.Join(' ', outcomes.Select(outcome => outcome.Said).Distinct()));
    }

    private static IReadOnlyList<Deed> Begin(Form form, Stamp stamp, BenchNow now)
    {
        var build = now.Journal.Builds.FirstOrDefault(build => build.Id.Value == form["build"]) ?? now.Build ?? throw new RefusedException("There is no build to work on. Add one with `journal add build`.");
        var (part, word) = (form["other-part"] ?? form["part"], form["other-operation"] ?? form["operation"]);
        if (part is not (null or "whole") && !build.HasPart(new(part)))
        {
            throw new RefusedException($"{build.Title} has no part `{part}`.");
        }

        var operation = word is null ? null : now.Journal.Vocabulary.Operations.TryFind(word, out var id) ? id.Value : throw new RefusedException($"There is no operation `{word}`.");
        return [new Begun(stamp.Id, stamp.At, build.Id.Value, part, operation)];
    }

    private static Func<Form, Stamp, BenchNow, IReadOnlyList<Deed>> Switch(Switching what) => (form, stamp, _) =>
    {
        var ended = form["ended"] is not { } text ? (TimeOnly?)null
            : TimeOnly.TryParseExact(text, "HH:mm", out var time) ? time : throw new RefusedException($"`{text}` is not a time. Write it as `22:40`.");
        return [new Switched(stamp.Id, stamp.At, what) { Ended = ended, WentOn = form["went-on"] is not null }];
    };

    private static Jotted Note(Form form, Stamp stamp, Said said, BenchNow now) => new(stamp.Id, stamp.At, said.Text)
    {
        Kind = said.Kind,
        Keys = PictureJot.Filled(said),
        Build = now.Build?.Id.Value,
        Changes = form["jot"],
    };

    private static IReadOnlyList<Deed> Pictures(Form form, Stamp stamp, BenchNow now)
    {
        if (form.Files.Count is 0 or > MostPicturesAtOnce)
        {
            throw new RefusedException(form.Files.Count == 0 ? "Choose a picture." : $"Send at most {MostPicturesAtOnce} pictures at once.");
        }

        return [.. form.Files.Select((file, i) =>
        {
            var bytes = new byte[file.Length];
            using var stream = file.OpenReadStream();
            stream.ReadExactly(bytes);
            try
            {
                return new PictureTaken(i == 0 ? stamp.Id : $"{stamp.Id}-{i}", stamp.At, bytes, IncomingPicture.EndingOf(bytes)) { Caption = Typed.Line(form["caption"]) };
            }
            catch (PictureRefusedException e)
            {
                throw new RefusedException($"The picture was not kept: {e.Message}");
            }
        })];
    }

    private static VerdictView? VerdictOf(string jot, BenchNow now) =>
        now.Slate.Jots.LastOrDefault(one => one.Id == jot)?.Kind == JotKind.Reading && TonightsSizes.OnSlate(now).TryGetValue(jot, out var judged) ? SizeVerdict.Of(judged) : null;
}
