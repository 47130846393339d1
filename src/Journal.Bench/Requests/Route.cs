namespace Journal.Bench.Requests;

/// <summary>Who may ask for something.</summary>
internal enum Who
{
    /// <summary>Anyone in the house.</summary>
    Anyone,

    /// <summary>Devices that were paired, and browsers on this machine that came by the address in the terminal.</summary>
    Paired,

    /// <summary>Browsers on this machine alone.</summary>
    Desk,
}

/// <summary>One thing that can be asked for.</summary>
/// <param name="Method"><c>GET</c> or <c>POST</c>.</param>
/// <param name="Path">The address; behind one that ends with <c>/*</c> stands one step more, such as an id, behind <c>/**</c> any number.</param>
/// <param name="Answer">Answers it.</param>
internal sealed record Route(string Method, string Path, Func<Asked, Task<Reply>> Answer)
{
    /// <summary>The longest body of a form without files, in bytes.</summary>
    public const long LongestForm = 256 * 1024;

    /// <summary>Who may ask.</summary>
    public Who Who { get; init; } = Who.Paired;

    /// <summary>The longest body that is taken, in bytes.</summary>
    public long LongestBody { get; init; } = LongestForm;

    /// <summary>A page that is made at once.</summary>
    public static Route Get(string path, Func<Asked, Reply> answer) => new("GET", path, asked => Task.FromResult(answer(asked)));

    /// <summary>Something that is sent.</summary>
    public static Route Post(string path, Func<Asked, Task<Reply>> answer) => new("POST", path, answer);

    /// <summary>Whether a path is meant.</summary>
    public bool Matches(string path) => Path.EndsWith("/**", StringComparison.Ordinal) ? path.StartsWith(Path[..^2], StringComparison.Ordinal)
        : Path.EndsWith("/*", StringComparison.Ordinal)
        ? path.StartsWith(Path[..^1], StringComparison.Ordinal) && path.Length >= Path.Length && path.IndexOf('/', Path.Length - 1) < 0
        : path == Path;
}
