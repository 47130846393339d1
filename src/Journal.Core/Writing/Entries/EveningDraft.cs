using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Texts;

namespace Journal.Core.Writing.Entries;

/// <summary>The file of an evening's entry as it would be written.</summary>
/// <param name="File">The file, relative to the journal.</param>
/// <param name="Text">Its text.</param>
/// <param name="Seen">The digest of the file that is there, as <see cref="OpenedText"/> has it; empty for a new one.</param>
public sealed record EntryDraft(string File, string Text, string Seen)
{
    /// <summary>Keys that the entry had already and kept as they were, with what was left out.</summary>
    public IReadOnlyList<(string Key, string Value)> LeftOut { get; init; } = [];
}

/// <summary>Makes the text of an evening's entry as <see cref="EveningEntry"/> writes it, to be looked at and changed before it is saved.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="build">The build that it is for.</param>
public sealed class EveningDraft(string folder, Build build)
{
    /// <summary>A new entry.</summary>
    /// <param name="evening">The evening.</param>
    /// <param name="jobs">The work in its order; at least one job.</param>
    /// <param name="words">What else is said.</param>
    public EntryDraft Of(DateOnly evening, IReadOnlyList<NewJob> jobs, WriteUp words)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        var name = NewEntry.Name(evening, jobs[0], one => build.Entries.Any(entry => entry.Id.Value == one) || File.Exists(PathOf(InBuild(one))));
        return new EntryDraft(InBuild(name), NewEntry.Of(evening, jobs, words), "");
    }

    /// <summary>An entry that is there, with what it does not say yet; nothing that it says is touched.</summary>
    /// <param name="file">The entry's file, relative to the journal.</param>
    /// <param name="words">What is said.</param>
    /// <returns>The draft; null with the reason where nothing can be added.</returns>
    public (EntryDraft? Draft, string WhyNot) Of(string file, WriteUp words)
    {
        if (MakersFile.Read(PathOf(file)) is not { } read)
        {
            return (null, $"{file} cannot be read.");
        }

        var (added, leftOut) = EveningEntry.WithWords(new EntryText(read.Text), words);
        return added.Text is { } text ? (new EntryDraft(file, text, DigestOf(read)) { LeftOut = leftOut }, "") : (null, $"{file}: {added.WhyNot}");
    }

    /// <summary>
    /// Saves an entry as it was typed and takes the evening's remarks from the slate, as one step. A file that another program has
    /// saved meanwhile is left as it is.
    /// </summary>
    /// <param name="slate">The slate, in one's hands.</param>
    /// <param name="file">The file, relative to the journal.</param>
    /// <param name="seen">The digest of the file as it was seen; empty for a new one.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="evening">The evening whose remarks are in it.</param>
    public TextSaving Save(SlateFile slate, string file, string seen, string typed, DateOnly evening)
    {
        ArgumentNullException.ThrowIfNull(slate);
        ArgumentNullException.ThrowIfNull(seen);
        var handover = new Handover(file, "", TakesStint: false, evening, slate.Slate.Unwritten is { } other && other.File != file ? other : null) { JotsFor = build.Id.Value };
        if (seen.Length == 0)
        {
            var isMade = slate.Create(handover, Encoding.UTF8.GetBytes(LineEnds.Kept("", typed)));
            return new TextSaving(isMade, OpenedText.Open(folder, file));
        }

        if (MakersFile.Read(PathOf(file)) is not { } read)
        {
            return new TextSaving(false, null);
        }

        var isSaved = DigestOf(read) == seen && slate.Replace(handover, read.Bytes(read.Text), read.Bytes(LineEnds.Kept(read.Text, typed)));
        return new TextSaving(isSaved, OpenedText.Open(folder, file));
    }

    private static string DigestOf(MakersFile read) => Convert.ToHexStringLower(SHA256.HashData(read.Bytes(read.Text)));

    private string InBuild(string name) => $"{build.Folder}/{name}.md";

    private string PathOf(string file) => Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar));
}
