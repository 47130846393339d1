namespace Journal.Core.Writing.Names;

/// <summary>A change of names in all files of a journal, worked out and not written yet.</summary>
/// <param name="Files">The files that change, by name.</param>
/// <param name="Moves">Folders and files that get another name, once the texts are changed.</param>
public sealed record NameChange(IReadOnlyList<FileChange> Files, IReadOnlyList<PathMove> Moves)
{
    /// <summary>How many lines change, in all files; lines added or removed count too.</summary>
    public int LineCount => Files.Sum(file => file.Lines.Sum(lines => Math.Max(lines.Old.Count, lines.New.Count)));
}

/// <summary>A folder or file that gets another name, from the journal's folder.</summary>
/// <param name="From">Its name now.</param>
/// <param name="To">Its new name.</param>
public sealed record PathMove(string From, string To);

/// <summary>A file whose text changes.</summary>
/// <param name="File">The file, from the journal's folder.</param>
/// <param name="Old">Its text now, without a byte-order mark.</param>
/// <param name="New">Its new text, without that mark too.</param>
/// <param name="HasMark">Whether it begins with a byte-order mark, which it keeps.</param>
public sealed record FileChange(string File, string Old, string New, bool HasMark)
{
    /// <summary>The lines that differ, in their order.</summary>
    public IReadOnlyList<ChangedLines> Lines => ChangedLines.Between(Old, New);
}

/// <summary>Lines that stand next to each other and change.</summary>
/// <param name="First">The number of the first, from 1, as the file is now.</param>
/// <param name="Old">The lines as they are; none where lines are added.</param>
/// <param name="New">The lines as they will be; none where lines go.</param>
public sealed record ChangedLines(int First, IReadOnlyList<string> Old, IReadOnlyList<string> New)
{
    /// <summary>
    /// What differs between two texts of which most lines are the same: from each line that differs on, the nearest place
    /// where both go on alike.
    /// </summary>
    public static IReadOnlyList<ChangedLines> Between(string old, string @new)
    {
        var (before, after) = (Split(old), Split(@new));
        var changes = new List<ChangedLines>();
        for (var (i, j) = (0, 0); i < before.Length || j < after.Length;)
        {
            if (i < before.Length && j < after.Length && before[i] == after[j])
            {
                (i, j) = (i + 1, j + 1);
                continue;
            }

            var (skipOld, skipNew) = NextAlike(before, i, after, j);
            changes.Add(new ChangedLines(i + 1, before[i..(i + skipOld)], after[j..(j + skipNew)]));
            (i, j) = (i + skipOld, j + skipNew);
        }

        return changes;
    }

    // The fewest lines to leave out of both; of equals those that take as many of one as of the other.
    private static (int Old, int New) NextAlike(string[] before, int i, string[] after, int j)
    {
        for (var sum = 1; sum <= before.Length - i + after.Length - j; sum++)
        {
            foreach (var skipOld in Enumerable.Range(0, sum + 1).OrderBy(one => Math.Abs((2 * one) - sum)))
            {
                var skipNew = sum - skipOld;
                if (i + skipOld <= before.Length && j + skipNew <= after.Length
                    && (i + skipOld == before.Length ? j + skipNew == after.Length : j + skipNew < after.Length && before[i + skipOld] == after[j + skipNew]))
                {
                    return (skipOld, skipNew);
                }
            }
        }

        return (before.Length - i, after.Length - j);
    }

    private static string[] Split(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n') is { Length: > 0 } lines ? lines.Split('\n') : [];
}

/// <summary>The answer to a wish to change a name: the change, or why there is none.</summary>
/// <param name="Change">The change; null where there is none.</param>
/// <param name="WhyNot">For the maker: what stands in the way, and what to do.</param>
public readonly record struct NameOutcome(NameChange? Change, string WhyNot)
{
    /// <summary>No change; <paramref name="why"/> says what stands in the way and what to do, in whole sentences.</summary>
    internal static NameOutcome Refused(string why) => new(null, why);
}
