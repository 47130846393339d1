using Journal.Core.Model;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing;

/// <summary>The entries that a build has of an evening already.</summary>
internal sealed class EntriesOf(Build build, DateOnly evening)
{
    private readonly List<Entry> entries = [.. build.Entries.Where(entry => entry.Date == evening)];

    /// <summary>The last of them; null without any.</summary>
    public Entry? Last => entries.Count == 0 ? null : entries[^1];

    /// <summary>The last with a job of the same part, operations and hours; null without one.</summary>
    public Entry? WithJob(NewJob job) => entries.FindLast(entry => entry.Jobs.Any(one => IsSame(one, job)));

    private static bool IsSame(Job one, NewJob other) =>
        one.Time == HoursText.TimeOf(other.Hours)
        && one.Parts.Select(share => share.Part.Value).ToHashSet().SetEquals(other.Parts.Where(part => part != "whole"))
        && one.Operations.Select(operation => operation.Value).ToHashSet().SetEquals(other.Operations.Count == 0 ? ["other"] : other.Operations);
}
