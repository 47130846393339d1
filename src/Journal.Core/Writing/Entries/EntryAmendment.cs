using Journal.Core.Model;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>Adds to an entry that stands already: lines and items, and nothing of what the maker wrote is touched.</summary>
/// <param name="folder">The journal's folder.</param>
public sealed class EntryAmendment(string folder)
{
    /// <summary>
    /// Adds everything in one step, or nothing. For those who hold the slate: no other command writes meanwhile. The file is
    /// read anew, so what was changed in it since the journal was read stays.
    /// </summary>
    /// <param name="entry">The entry.</param>
    /// <param name="amendment">What to add.</param>
    public Written Add(Entry entry, Amendment amendment)
    {
        var added = MakersFile.Edit(Path.Combine(folder, entry.File.Replace('/', Path.DirectorySeparatorChar)), text => AddTo(new EntryText(text), entry, amendment));
        return added is not { } done ? new Written(null, $"{entry.File} cannot be read.")
            : done.Text is null ? new Written(null, $"{entry.File}: {done.WhyNot}")
            : new Written(entry.File, "");
    }

    private static Added AddTo(EntryText text, Entry entry, Amendment amendment)
    {
        if (WhyRenumbered(entry, amendment, text) is { } why)
        {
            return Added.Refused(why);
        }

        foreach (var step in Steps(amendment))
        {
            var added = step(text);
            if (added.Text is not { } longer)
            {
                return added;
            }

            text = new EntryText(longer);
        }

        return Added.As(text.Text);
    }

    private static IEnumerable<Func<EntryText, Added>> Steps(Amendment amendment)
    {
        foreach (var (key, items) in amendment.Lists.Where(list => list.Items.Count > 0))
        {
            yield return text => text.Items(key, items);
        }

        if (amendment.Next is { } next)
        {
            yield return text => text.Has("next")
                ? Added.Refused("It has a `next` already, which stays as it is. Change it in the editor.")
                : text.Keys([("next", YamlText.Of(next))]);
        }

        foreach (var photo in amendment.Captions)
        {
            yield return text => text.Caption(photo);
        }
    }

    // A lesson without an id is known by its number in the entry; one put in before it would take that over.
    private static string? WhyRenumbered(Entry entry, Amendment amendment, EntryText text)
    {
        var unnamed = entry.Lessons.Where(lesson => lesson.Id.Value.StartsWith($"{entry.Build}-{entry.Id}-", StringComparison.Ordinal)).ToList();
        var comesFirst = text.IsBefore("lessons", "mistakes");
        var isMoved = comesFirst switch
        {
            true => amendment.Lessons.Count > 0 ? unnamed.Find(lesson => lesson.FromMistake) : null,
            false => amendment.Mistakes.Any(mistake => mistake.Lesson is not null) ? unnamed.Find(lesson => !lesson.FromMistake) : null,
            _ => null,
        };
        return isMoved is null ? null
            : $"The lesson would stand before “{isMoved.Text}”, which has no id and is known by its number. Give that one an id first: `journal rename lesson {isMoved.Id} <id>`.";
    }
}
