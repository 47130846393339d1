using System.CommandLine;

namespace Journal.Cli.Commands;

/// <summary>A command whose help ends with an example.</summary>
/// <param name="name">The word that calls it.</param>
/// <param name="description">One sentence on what it does.</param>
/// <param name="example">A call that a maker could type as it stands.</param>
internal sealed class ExampledCommand(string name, string description, string example) : Command(name, description)
{
    /// <summary>A call that a maker could type as it stands.</summary>
    public string Example { get; } = example;
}
