namespace Journal.Cli.Output;

/// <summary>The forms in which results can be had.</summary>
internal enum OutputFormat
{
    /// <summary>For people.</summary>
    Table,

    /// <summary>For spreadsheets.</summary>
    Csv,

    /// <summary>For programs.</summary>
    Json,
}
