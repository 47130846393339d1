using System.CommandLine;

namespace Journal.Cli.Options;

/// <summary>The options that say which job is meant.</summary>
internal static class JobOptions
{
    /// <summary><c>--build id</c>.</summary>
    public static Option<string?> Build() => new("--build") { Description = "The build. Default: the one under way.", HelpName = "id" };

    /// <summary><c>--build id</c>, of a command that looks into all builds.</summary>
    public static Option<string?> OfAny() => new("--build") { Description = "Only this build.", HelpName = "id" };

    /// <summary><c>--part id</c>.</summary>
    public static Option<string?> Part() => new("--part") { Description = "The part, or `whole`. Default: the same as last time.", HelpName = "id" };

    /// <summary><c>--operation id</c>.</summary>
    public static Option<string?> Operation() => new("--operation") { Description = "The operation, such as boring. Default: the same as last time.", HelpName = "id" };

    /// <summary><c>--operation id</c>, once for each of several.</summary>
    public static Option<string[]> Operations() => new("--operation")
    {
        Description = "What the hands did, such as boring; once for each. Left out: that of last time.",
        HelpName = "id",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
    };
}
