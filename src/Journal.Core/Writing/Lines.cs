using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing;

/// <summary>Adds a line to the file that it belongs in; its neighbours stay as they are.</summary>
/// <param name="folder">The journal's folder.</param>
public sealed class Lines(string folder)
{
    /// <summary>The tool crib.</summary>
    public const string Crib = "tools.yaml";

    /// <summary>Whether a build can have that name: the site, or Windows, has another use for some.</summary>
    public static bool MayNameABuild(string id) => !FileNames.IsReserved(id) && !FileNames.IsOfTheSite(id);

    /// <summary>Begins a build: a folder with its <c>build.yaml</c>.</summary>
    /// <param name="id">The build's id, which is the folder's name.</param>
    /// <param name="keys">Keys with what the maker said; null values are left out.</param>
    public Written AddBuild(string id, IReadOnlyList<(string Key, string? Value)> keys)
    {
        var file = $"{id}/build.yaml";
        return Create(file, Text(keys));
    }

    /// <summary>Begins a plan: a file of its own.</summary>
    /// <param name="id">The plan's id, which is the file's name.</param>
    /// <param name="keys">Keys with what the maker said; null values are left out.</param>
    /// <param name="parts">The keys of each part.</param>
    public Written AddPlan(string id, IReadOnlyList<(string Key, string? Value)> keys, IReadOnlyList<IReadOnlyList<(string Key, string? Value)>> parts)
    {
        var file = $"plans/{id}.yaml";
        return Create(file, $"{Text(keys)}parts:\n{string.Concat(parts.Select(part => $"  - {Line(part)}\n"))}");
    }

    /// <summary>Adds a part to a build's list.</summary>
    public Written AddPart(Build build, IReadOnlyList<(string Key, string? Value)> keys) => AddPart($"{build.Folder}/build.yaml", keys);

    /// <summary>Adds a part to a plan's list.</summary>
    public Written AddPart(Plan plan, IReadOnlyList<(string Key, string? Value)> keys) => AddPart(plan.File, keys);

    /// <summary>Adds a tool to the crib, which is made where there is none.</summary>
    public Written AddTool(IReadOnlyList<(string Key, string? Value)> keys) =>
        SafeFile.TryCreate(PathOf(Crib), $"- {Line(keys)}\n") ? new Written(Crib, "") : Add(Crib, yaml => yaml.Items([Line(keys)]));

    private Written AddPart(string file, IReadOnlyList<(string Key, string? Value)> keys) => Add(file, yaml => yaml.Items("parts", [Line(keys)]));

    private Written Create(string file, string text) =>
        SafeFile.TryCreate(PathOf(file), text) ? new Written(file, "") : new Written(null, $"{file} already exists; nothing was written.");

    private static string Text(IReadOnlyList<(string Key, string? Value)> keys) =>
        string.Concat(keys.Where(pair => pair.Value is not null).Select(pair => $"{pair.Key}: {YamlText.Of(pair.Value!)}\n"));

    private Written Add(string file, Func<Addition, Added> add) => MakersFile.Edit(PathOf(file), text => add(Addition.To(text))) switch
    {
        null => new Written(null, $"{file} cannot be read. See `journal check`."),
        { Text: null } refused => new Written(null, $"{file}: {refused.WhyNot}"),
        _ => new Written(file, ""),
    };

    private static string Line(IReadOnlyList<(string Key, string? Value)> keys) =>
        YamlText.Map([.. keys.Select(pair => (pair.Key, pair.Value is null ? null : YamlText.Of(pair.Value)))]);

    private string PathOf(string file) => Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar));
}
