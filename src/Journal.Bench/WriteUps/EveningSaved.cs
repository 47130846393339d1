using Journal.Bench.Slates;
using Journal.Core.Model;
using Journal.Core.Writing;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Bench.WriteUps;

/// <summary>An evening's entry is saved as it was typed, with the lines for new tools and parts that were confirmed.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent.</param>
/// <param name="Evening">The evening.</param>
/// <param name="Draft">The draft that it was made from.</param>
/// <param name="Seen">The digest of the entry's file as it was seen; empty for a new one.</param>
/// <param name="Noted">By which it is known whether more was noted since.</param>
/// <param name="Typed">What was typed.</param>
internal sealed record EveningSaved(string Id, DateTimeOffset At, EveningToWrite Evening, Drafted Draft, string Seen, string Noted, string Typed) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands) => hands.With(slate =>
    {
        if (EveningToWrite.DigestOf(slate.Slate.JotsOf(Evening.Evening, Evening.Build.Id.Value)) != Noted)
        {
            throw new RefusedException("Something was noted, changed or taken back for this evening after you began to write. Nothing was saved. See below what is new, put it into the text, then save again.");
        }

        var saving = new EveningDraft(hands.Folder, Evening.Build).Save(slate, Draft.Entry.File, Seen, Typed, Evening.Evening);
        if (!saving.IsSaved)
        {
            throw new RefusedException($"{Draft.Entry.File} was saved by another program after you began. Nothing was saved: open it under Files, and put into it what you typed here.");
        }

        return string.Join(' ', ["Saved.", .. Lines(hands.Folder, Evening.Build, Draft.Told)]);
    });

    // The entry names them; one that cannot be added is told, and counts as unlisted till then.
    private static IEnumerable<string> Lines(string folder, Build build, ToldEvening told)
    {
        var lines = new Lines(folder);
        return
        [
            .. told.NewTools.Select(tool => lines.AddTool([("id", tool.Id), ("title", tool.Title)])).Concat(told.NewParts.Select(part => lines.AddPart(build, [("id", part.Id), ("title", part.Title)])))
                .Where(written => written.File is null).Select(written => written.WhyNot),
        ];
    }
}
