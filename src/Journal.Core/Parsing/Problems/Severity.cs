namespace Journal.Core.Parsing.Problems;

/// <summary>What a problem stops.</summary>
public enum Severity
{
    /// <summary>Publishing: the old site stays as it was.</summary>
    Error,

    /// <summary>Only the thing named: the rest is published, the exit status is 1.</summary>
    Omission,

    /// <summary>Nothing.</summary>
    Warning,
}
