using Journal.Core.Model;
using Journal.Core.Parsing;
using Journal.Site.Feeds;
using Journal.Site.Output;
using Journal.Site.Search;
using Journal.Site.Templates;
using Journal.Site.Text;

namespace Journal.Site.Republishing;

/// <summary>
/// Publishes a change of words: where entries say other things about the same facts, the site is the old one with the new
/// words in the places of the old. Neither the journal nor its figures are needed for it.
/// </summary>
internal sealed class WordsEdit
{
    private readonly PublishRecord record;
    private readonly string site;
    private readonly Dictionary<string, List<Patch>> patches = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> toFind = new(StringComparer.Ordinal);

    private WordsEdit(PublishRecord record, string site) => (this.record, this.site) = (record, site);

    /// <summary>The edit that leads from a record to the journal as it is; null where more than words changed.</summary>
    /// <param name="record">What was published.</param>
    /// <param name="site">Where it stands, untouched.</param>
    /// <param name="changed">The files of the journal that are other than then.</param>
    public static WordsEdit? Of(PublishRecord record, string site, IEnumerable<string> changed)
    {
        var edit = new WordsEdit(record, site);
        return changed.All(edit.Takes) ? edit : null;
    }

    /// <summary>Writes the pages that show the words, and keeps all others.</summary>
    /// <param name="to">The site being written.</param>
    /// <param name="index">The find index of the old site; becomes that of the new one.</param>
    /// <returns>The places of all words as they are now.</returns>
    public IReadOnlyDictionary<string, EntrySlots> Write(SiteFolder to, FindIndex index)
    {
        foreach (var (address, of) in patches)
        {
            to.Write(address, Patched(File.ReadAllBytes(At(address)), of));
        }

        var gone = index.WithWords(toFind, name => FindIndex.TextsIn(File.ReadAllBytes(At(FindPiece.AddressOf(name)))), to.Write);
        if (toFind.Count > 0)
        {
            to.Write(FindIndex.Address, index.Script());
        }

        to.KeepOthers(gone);
        return record.Entries.ToDictionary(entry => entry.Key, entry => entry.Value with { Slots = [.. entry.Value.Slots.Select(Moved)] }, StringComparer.Ordinal);
    }

    private bool Takes(string file)
    {
        if (!record.Entries.TryGetValue(file, out var entry) || EntryWords.Read(record.Folder, file) is not { } words || words.Facts != entry.Facts)
        {
            return false;
        }

        if (entry.Slots.Count > 0)
        {
            toFind[entry.Address] = PlainText.Of(words.Body.Document);
        }

        foreach (var slot in entry.Slots)
        {
            // Where there were no words and are now, or the other way round, the page has another shape.
            var content = ContentOf(slot, words);
            if (content.Length == 0 != (slot.Length == 0))
            {
                return false;
            }

            if (content.Length > 0)
            {
                (patches.TryGetValue(slot.Address, out var of) ? of : patches[slot.Address] = []).Add(new Patch(slot.Offset, slot.Length, content));
            }
        }

        return true;
    }

    private byte[] ContentOf(WordSlot slot, EntryWords words)
    {
        var body = TextAnswers.Asking(words.Body);
        var html = new BodyHtml(slot.Answers);
        return slot.Kind switch
        {
            SlotKind.Story when record.Story.In(slot.About, body.Document) is var story => story.Count == 0 ? [] : Bytes(html.Render(body, story)),
            SlotKind.Atom => FeedText.InAtom(FeedText.Of(html.Render(body), record.Home)),
            SlotKind.Json => FeedText.InJson(FeedText.Of(html.Render(body), record.Home)),
            _ => Bytes(html.Render(body)),
        };
    }

    private WordSlot Moved(WordSlot slot)
    {
        if (slot.Length == 0 || !patches.TryGetValue(slot.Address, out var of))
        {
            return slot;
        }

        var before = of.Where(patch => patch.Offset < slot.Offset).Sum(patch => patch.Content.Length - patch.Length);
        var own = of.Find(patch => patch.Offset == slot.Offset);
        return slot with { Offset = slot.Offset + before, Length = own?.Content.Length ?? slot.Length };
    }

    private static byte[] Patched(byte[] file, List<Patch> patches)
    {
        using var patched = new MemoryStream(file.Length + 1024);
        var at = 0;
        foreach (var patch in patches.OrderBy(patch => patch.Offset))
        {
            patched.Write(file, at, patch.Offset - at);
            patched.Write(patch.Content);
            at = patch.Offset + patch.Length;
        }

        patched.Write(file, at, file.Length - at);
        return patched.ToArray();
    }

    private static byte[] Bytes(SafeHtml html) => System.Text.Encoding.UTF8.GetBytes(html.ToString());

    private string At(string address) => Path.Combine(site, address.Replace('/', Path.DirectorySeparatorChar));

    private sealed record Patch(int Offset, int Length, byte[] Content);
}
