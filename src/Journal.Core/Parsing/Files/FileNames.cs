using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Parsing.Files;

/// <summary>Which names of files and folders can become addresses of the site, on every system.</summary>
internal static class FileNames
{
    private static readonly HashSet<string> ReservedOnWindows =
    [
        "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
        "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9",
    ];

    /// <summary>Names at the top of the site that a build cannot have.</summary>
    private static readonly HashSet<string> TopOfSite = ["operation", "lesson", "lessons", "plan", "plans", "look", "photos", "index", "tooling", "timeline", "find", "feed"];

    /// <summary>Whether a name can be an address; else the problem is logged.</summary>
    public static bool IsFit(string name, Place place, ProblemLog log, bool atTopOfSite = false)
    {
        if (!Id<object>.HasRightForm(name))
        {
            log.Add(ProblemTable.BadFileName, place, name, Slug.Of(name));
            return false;
        }

        if (IsReserved(name) || (atTopOfSite && IsOfTheSite(name)))
        {
            log.Add(ProblemTable.ReservedName, place, name);
            return false;
        }

        return true;
    }

    /// <summary>Whether the site has something of that name at its top.</summary>
    public static bool IsOfTheSite(string name) => TopOfSite.Contains(name);

    /// <summary>Whether Windows keeps a name, with any ending, for a device.</summary>
    public static bool IsReserved(string name) => ReservedOnWindows.Contains(name);
}
