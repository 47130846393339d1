namespace Journal.Browser.Tests;

/// <summary>Faults gathered over many pages, told together.</summary>
internal static class Faults
{
    private const int MostTold = 12;

    public static void None(IReadOnlyCollection<string> faults) => Assert.True(faults.Count == 0, $"{faults.Count} faults:\n{string.Join('\n', faults.Take(MostTold))}");
}
