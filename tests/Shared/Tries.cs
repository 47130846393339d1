namespace Journal.Tests.Shared;

/// <summary>
/// How often an attack was tried: with JOURNAL_TRIES set to a file, each test that attacks adds a line with the kind and the
/// count. <c>tests/attack.sh</c> adds them up.
/// </summary>
internal static class Tries
{
    private static readonly Lock OneAtATime = new();

    public static void Add(string kind, int count)
    {
        if (Environment.GetEnvironmentVariable("JOURNAL_TRIES") is { Length: > 0 } file)
        {
            lock (OneAtATime)
            {
                File.AppendAllText(file, FormattableString.Invariant($"{kind} {count}\n"));
            }
        }
    }
}
