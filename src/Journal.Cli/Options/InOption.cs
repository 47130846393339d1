using System.CommandLine;

namespace Journal.Cli.Options;

/// <summary><c>--in folder</c>: which journal is meant.</summary>
internal static class InOption
{
    /// <summary>The option, one to a command.</summary>
    public static Option<string?> Create() => new("--in")
    {
        Description = "The journal's folder. Default: the nearest folder upwards with a journal.yaml, else ./journal.",
        HelpName = "folder",
    };
}
