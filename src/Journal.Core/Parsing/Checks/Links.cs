using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>Finds what the links in a text point to.</summary>
internal sealed class Links(Ids ids, IReadOnlyDictionary<Id<Build>, ILookup<DateOnly, Id<Entry>>> entriesByDate, LostIds lost, ProblemLog log)
{
    /// <summary>The entry with its links resolved; a target that does not exist is reported with the nearest that does.</summary>
    public Entry Resolve(Entry entry) => entry.Body.Links.Count == 0
        ? entry
        : entry with { Body = entry.Body with { Links = [.. entry.Body.Links.Select(link => link with { Target = Find(link, entry.Build) })] } };

    private LinkTarget? Find(BodyLink link, Id<Build> build)
    {
        var colon = link.Written.IndexOf(':', StringComparison.Ordinal);
        var name = Uri.UnescapeDataString(link.Written[(colon + 1)..]);
        return link.Written[..colon] switch
        {
            "tool" => Known(IdKind.Tool, LinkKind.Tool, null, name, link),
            "lesson" => Known(IdKind.Lesson, LinkKind.Lesson, null, name, link),
            "part" => InBuild(IdKind.Part, LinkKind.Part, build, name, link),
            _ => InBuild(IdKind.Entry, LinkKind.Entry, build, name, link),
        };
    }

    private LinkTarget? InBuild(IdKind kind, LinkKind linkKind, Id<Build> build, string name, BodyLink link)
    {
        if (name.IndexOf('/', StringComparison.Ordinal) is > 0 and var slash)
        {
            (build, name) = (new Id<Build>(name[..slash]), name[(slash + 1)..]);
            if (!entriesByDate.ContainsKey(build))
            {
                log.Add(ProblemTable.UnknownLinkTarget, link.Place, link.Written, Suggestion.For(build.Value, [.. entriesByDate.Keys.Select(id => id.Value)], "builds"));
                return null;
            }
        }

        return kind == IdKind.Entry && Dates.TryParse(name, out var date) ? OnDate(build, date, link) : Known(kind, linkKind, build, name, link);
    }

    private LinkTarget? OnDate(Id<Build> build, DateOnly date, BodyLink link)
    {
        var onDate = entriesByDate[build][date].ToArray();
        switch (onDate.Length)
        {
            case 1:
                return new LinkTarget(LinkKind.Entry, build, onDate[0].Value);
            case 0 when lost.HasEntryOn(build, Dates.Write(date)):
                return null;
            case 0:
                log.Add(ProblemTable.UnknownLinkTarget, link.Place, link.Written, Suggestion.For(Dates.Write(date), ids.Known(IdKind.Entry, build), "entries"));
                return null;
            default:
                log.Add(ProblemTable.AmbiguousEntry, link.Place, link.Written, onDate.Length, string.Join(", ", onDate.Select(id => $"`entry:{id}`")));
                return null;
        }
    }

    private LinkTarget? Known(IdKind kind, LinkKind linkKind, Id<Build>? build, string name, BodyLink link)
    {
        if (ids.Has(kind, build, name))
        {
            return new LinkTarget(linkKind, build, name);
        }

        if (lost.Has(kind, build, name))
        {
            return null;
        }

        var plural = linkKind switch { LinkKind.Tool => "tools", LinkKind.Lesson => "lessons", LinkKind.Part => "parts", _ => "entries" };
        log.Add(ProblemTable.UnknownLinkTarget, link.Place, link.Written, Suggestion.For(name, ids.Known(kind, build), plural));
        return null;
    }
}
