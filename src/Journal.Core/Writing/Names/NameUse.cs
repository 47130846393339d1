using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>What can have its name changed.</summary>
public enum NameKind
{
    /// <summary>A part of a build.</summary>
    Part,

    /// <summary>A tool.</summary>
    Tool,

    /// <summary>An operation that the journal added.</summary>
    Operation,

    /// <summary>A lesson.</summary>
    Lesson,

    /// <summary>A build.</summary>
    Build,
}

/// <summary>A place where a name stands in a file.</summary>
/// <param name="Kind">What it is the name of.</param>
/// <param name="Build">The build, where the name counts within one; null elsewhere.</param>
/// <param name="Name">The name.</param>
/// <param name="Start">Where it begins in the file, in UTF-16 units.</param>
/// <param name="Length">How long it is there.</param>
internal sealed record NameUse(NameKind Kind, string? Build, string Name, int Start, int Length)
{
    /// <summary>Whether the thing is defined here, and not only mentioned.</summary>
    public bool IsDefinition { get; init; }

    /// <summary>The item, list or map that holds it, for those who change more than the name; null in texts.</summary>
    public SourceNode? Holder { get; init; }

    /// <summary>The key that it stands behind; empty in texts.</summary>
    public string Key { get; init; } = "";
}
