using Spectre.Console;
using Spectre.Console.Rendering;

namespace Journal.Cli.Output;

/// <summary>The look of our tables: a thin rule under the headings, another above the totals, and nothing else.</summary>
internal sealed class ThinRule : TableBorder
{
    /// <inheritdoc/>
    public override bool SupportsRowSeparator => false;

    /// <inheritdoc/>
    public override string GetPart(TableBorderPart part) => part switch
    {
        TableBorderPart.HeaderBottom or TableBorderPart.FooterTop => "─",
        TableBorderPart.HeaderBottomSeparator or TableBorderPart.FooterTopSeparator => "─",
        TableBorderPart.HeaderSeparator or TableBorderPart.CellSeparator => " ",
        _ => "",
    };
}
