using Journal.Core.PlainWords;

namespace Journal.Core.Tests.PlainWords;

/// <summary>Accounts of an evening on the demonstration's bench drill (inches) or dividing head (millimetres), read.</summary>
internal static class Told
{
    private static readonly DateOnly Day = new(2026, 12, 1);

    public static Proposal OfTheDrill(string account) => Of("bench-drill", account);

    public static Proposal OfTheHead(string account) => Of("dividing-head", account);

    private static Proposal Of(string id, string account) =>
        AccountReader.Read(account, Demo.Journal, Demo.Journal.Builds.Single(build => build.Id.Value == id), Day);
}
