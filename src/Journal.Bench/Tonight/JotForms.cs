using System.Globalization;
using Journal.Bench.Common;
using Journal.Bench.Requests;
using Journal.Bench.Slates;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Bench.Tonight;

/// <summary>What one of the page's forms says.</summary>
/// <param name="Kind">What it becomes in the entry; null for a line of its text.</param>
/// <param name="Text">What it says in words.</param>
/// <param name="Keys">What the entry says under the keys of its kind; null values are left out.</param>
internal sealed record Said(string? Kind, string Text, params IReadOnlyList<(string Key, string? Value)> Keys);

/// <summary>Reads the forms of the page, each kind of remark one. What is wrong is refused with a remedy, and stays in the form.</summary>
internal static class JotForms
{
    private const int LongestText = 4000;

    /// <summary>The forms by the last step of the address that they are sent to.</summary>
    public static IReadOnlyDictionary<string, Func<Form, BenchNow, Said>> All { get; } = new Dictionary<string, Func<Form, BenchNow, Said>>(StringComparer.Ordinal)
    {
        ["remark"] = Remark,
        [JotKind.Mistake] = Mistake,
        [JotKind.Reading] = Reading,
        [JotKind.Setting] = Setting,
        [JotKind.Bought] = Bought,
        [JotKind.Finished] = Finished,
        [JotKind.Heeded] = Heeded,
        [JotKind.Cleared] = Cleared,
        ["caption"] = Caption,
    };

    private static Said Remark(Form form, BenchNow now) => new(null, Wanted(form, "text", "Say what there is to remark."));

    private static Said Mistake(Form form, BenchNow now)
    {
        var what = Wanted(form, "what", "Say what went wrong.");
        var cause = form["cause"] is not { } word ? (Id<Cause>?)null
            : now.Journal.Vocabulary.Causes.TryFind(word, out var id) ? id : throw new RefusedException($"There is no cause `{word}`.");
        var lost = Typed.Number(form["lost"]);
        Refuse(lost is not null && !HoursText.IsDuration(lost), $"`{lost}` is not a time. Write `20m` or `1h30`.");
        var (why, cost) = (cause is { } known ? Casing.Lower(now.Titles.Of(known)) : null, lost is null ? null : $"{lost} lost");
        var beside = string.Join(", ", new[] { why, cost }.OfType<string>());
        return new Said(
            JotKind.Mistake,
            $"Went wrong: {what}{(beside.Length == 0 ? "" : $" ({beside})")}",
            ("what", what), ("cause", cause?.Value), ("lost", lost), ("lesson", Line(form, "lesson")), ("part", now.Slate.Stint?.Part), ("operation", now.Slate.Stint?.Operation));
    }

    private static Said Reading(Form form, BenchNow now)
    {
        var (part, feature) = SizeOf(form, now);
        var required = Typed.Number(Line(form, "required"));
        var actual = Line(form, "gauge") ?? Typed.Number(Wanted(form, "actual", "Say what was measured."))!;
        var known = PartOf(part, now);
        var judged = TonightsSizes.Judge(now, new MeasuredReading { Part = known?.Id, Feature = feature, Required = required, Actual = actual });
        Refuse(judged?.Fault is { Code: not FaultCode.LikelySlip }, $"{judged?.Fault?.What} {judged?.Fault?.Remedy}");
        return new Said(
            JotKind.Reading,
            $"{(known is null ? "" : $"{known.Title}, ")}{feature}: {actual}{(required is null ? "" : $" (required {required})")}",
            ("part", known?.Id.Value), ("feature", feature), ("required", required), ("actual", actual));
    }

    private static Said Setting(Form form, BenchNow now)
    {
        var (rpm, feed, depth, cutter) = (Typed.Number(form["rpm"]), Typed.Number(Line(form, "feed")), Typed.Number(Line(form, "depth")), Line(form, "cutter"));
        Refuse(rpm is null && feed is null && depth is null, "Say the speed, the feed or the depth of cut.");
        var turns = decimal.TryParse(rpm, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : (decimal?)null;
        Refuse(rpm is not null && turns is null, $"`{rpm}` is not a speed. Write turns a minute as a number, such as `480`.");
        var job = new Job { Number = 1, Parts = [], Operations = [new(now.Slate.Stint?.Operation ?? "other")], Time = Minutes.Zero };
        var fault = now.Build is { } build ? SettingToCome.FaultOf(now.Journal, build, job, new Setting { Rpm = turns, Feed = feed, Depth = depth }) : null;
        Refuse(fault is { Code: not FaultCode.LikelySlip }, $"{fault?.What} {fault?.Remedy}");
        var words = new[] { rpm is null ? null : $"{rpm} rpm", feed is null ? null : $"feed {feed}", depth is null ? null : $"{depth} deep", cutter }.OfType<string>();
        return new Said(
            JotKind.Setting,
            $"Worked: {string.Join(", ", words)}",
            ("rpm", rpm), ("feed", feed), ("depth", depth), ("cutter", cutter), ("verdict", "worked"), ("part", now.Slate.Stint?.Part), ("operation", now.Slate.Stint?.Operation));
    }

    private static Said Bought(Form form, BenchNow now)
    {
        var what = Wanted(form, "what", "Say what was bought.");
        var cost = Typed.Money(form["cost"]) ?? throw new RefusedException("Say what it cost, only the amount, such as `12.50`.");
        var amount = cost.ToString("0.00", CultureInfo.InvariantCulture);
        return new Said(JotKind.Bought, $"Bought: {what}, {amount} {now.Journal.Currency}", ("what", what), ("cost", amount));
    }

    private static Said Finished(Form form, BenchNow now)
    {
        var part = PartOf(Wanted(form, "part", "Say which part."), now)!;
        var pieces = form["pieces"];
        Refuse(pieces is not null && !(int.TryParse(pieces, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= 1 && count <= part.Quantity), $"`{pieces}` is not a number of pieces from 1 to {part.Quantity.ToString(CultureInfo.InvariantCulture)}.");
        return new Said(JotKind.Finished, $"Finished: {part.Title}{(pieces is null ? "" : $", {pieces} of {part.Quantity.ToString(CultureInfo.InvariantCulture)}")}", ("part", part.Id.Value), ("pieces", pieces));
    }

    private static Said Heeded(Form form, BenchNow now)
    {
        var id = form["of"];
        var lesson = now.Journal.Entries.SelectMany(entry => entry.Lessons).FirstOrDefault(lesson => lesson.Id.Value == id) ?? throw new RefusedException("There is no such lesson any more.");
        return new Said(JotKind.Heeded, $"Heeded: {lesson.Text}", ("id", id));
    }

    private static Said Cleared(Form form, BenchNow now)
    {
        var id = form["of"];
        var open = now.State?.Snags.FirstOrDefault(open => open.Snag.Id.Value == id) ?? throw new RefusedException("There is no such snag open any more.");
        return new Said(JotKind.Cleared, $"Put right: {open.Snag.Text}", ("id", id));
    }

    // Said anew of a picture that is there.
    private static Said Caption(Form form, BenchNow now)
    {
        var file = now.Slate.Jots.FirstOrDefault(jot => jot.Id == form["jot"] && jot.Kind == JotKind.Photo)?["file"] ?? throw new RefusedException("That picture is in an entry already, or was taken back.");
        var caption = Line(form, "caption");
        return PictureJot.Of(file, caption);
    }

    // `part.feature`, as the buttons have it; else what was typed, of the part that was chosen.
    private static (string? Part, string Feature) SizeOf(Form form, BenchNow now)
    {
        if (Line(form, "other-feature") is { } typed)
        {
            return (form["part"], typed);
        }

        var feature = Line(form, "feature") ?? throw new RefusedException("Say what was measured, such as `bore`.");
        var dot = feature.IndexOf('.', StringComparison.Ordinal);
        return dot > 0 && now.Build?.HasPart(new(feature[..dot])) == true ? (feature[..dot], feature[(dot + 1)..]) : (form["part"], feature);
    }

    private static Part? PartOf(string? id, BenchNow now) => id is null or "whole" ? null
        : now.Build?.Parts.FirstOrDefault(part => part.Id.Value == id) ?? throw new RefusedException($"There is no part `{id}` in {now.Build?.Title ?? "the journal"}.");

    private static string Wanted(Form form, string field, string remedy) => Line(form, field) ?? throw new RefusedException(remedy);

    private static string? Line(Form form, string field) =>
        Typed.Line(form[field]) is not { } text ? null
            : text.Length <= LongestText ? text : throw new RefusedException($"That is longer than {LongestText.ToString(CultureInfo.InvariantCulture)} letters. Say it in several remarks.");

    private static void Refuse(bool isWrong, string why)
    {
        if (isWrong)
        {
            throw new RefusedException(why);
        }
    }
}
