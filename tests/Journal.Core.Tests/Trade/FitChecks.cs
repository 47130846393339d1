using System.Globalization;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Tests.Trade;

/// <summary>A row of <c>shared/fits-checks.yaml</c>: what a published table says.</summary>
public sealed record FitCheck(decimal Size, string Code, decimal Upper, decimal Lower, string Source)
{
    public override string ToString() => $"{Size.ToString(CultureInfo.InvariantCulture)} {Code} ({Source})";
}

internal static class FitChecks
{
    public static IEnumerable<FitCheck> Load()
    {
        using var reader = new StreamReader(Path.Combine(AppContext.BaseDirectory, "shared", "fits-checks.yaml"));
        var yaml = new YamlStream();
        yaml.Load(reader);
        return [.. ((YamlSequenceNode)yaml.Documents[0].RootNode).Select(row => new FitCheck(
            Number(row, "size"),
            Text(row, "code"),
            Number(row, "upper"),
            Number(row, "lower"),
            Text(row, "source")))];
    }

    private static string Text(YamlNode row, string key) => ((YamlScalarNode)row[key]).Value!;

    private static decimal Number(YamlNode row, string key) => decimal.Parse(Text(row, key), CultureInfo.InvariantCulture);
}
