using Journal.Bench.Slates;
using Journal.Core.Writing.Texts;

namespace Journal.Bench.Texts;

/// <summary>A file is saved as it was typed. Saved twice it is the same; so it needs no id that a browser made.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent.</param>
/// <param name="File">The file.</param>
/// <param name="Seen">The digest of what the maker saw of it.</param>
/// <param name="Typed">What was typed.</param>
internal sealed record TextSaved(string Id, DateTimeOffset At, JournalFile File, string Seen, string Typed) : Deed(Id, At)
{
    /// <summary>What came of it.</summary>
    public TextSaving Saving { get; private set; }

    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        Saving = hands.With(slate => OpenedText.Save(slate, hands.Folder, File.File, Seen, Typed));
        return Saving switch
        {
            { IsSaved: true } => "Saved.",
            { Now: null } => throw new RefusedException($"{File.File} is gone, or cannot be read as text. Nothing was saved: what you typed stands below; copy it if you need it."),
            _ => throw new RefusedException($"{File.File} was saved by another program after you opened it. Nothing was saved: below is what you typed, and beside it what is on the disk. Put them together, then save again."),
        };
    }
}
