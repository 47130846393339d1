using Journal.Core.Model;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>Gives a lesson an id that was known by its number so far.</summary>
internal static class LessonName
{
    /// <summary>What is to be put into the entry; null where the lesson is written in a way that takes no key.</summary>
    public static IEnumerable<Splice>? Give(NamedFile file, Entry entry, Lesson lesson, string name)
    {
        var nodes = Lessons(file.Tree as SourceMap).OrderBy(node => node.Start).ToList();
        var number = entry.Lessons.Index().First(one => one.Item.Id == lesson.Id).Index;
        return nodes.Count != entry.Lessons.Count ? null : nodes[number] switch
        {
            SourceText text => [new Splice(file.Front + text.Start, text.End - text.Start, YamlText.Map(("id", name), ("text", YamlText.Of(text.Text)), ("formerly", lesson.Id.Value)))],
            SourceMap map => WithId(file, map, name, lesson.Id.Value),
            _ => null,
        };
    }

    private static IEnumerable<Splice>? WithId(NamedFile file, SourceMap map, string name, string old) => map.IsInBraces
        ? [Splice.At(file.Front + map.Pairs[0].Key.Start, $"id: {name}, formerly: {old}, ")]
        : [Splice.At(file.Front + map.Pairs[0].Key.Start, $"id: {name}\n{new string(' ', ItemKey.Column(file.Yaml, map.Start))}formerly: {old}\n{new string(' ', ItemKey.Column(file.Yaml, map.Start))}")];

    private static IEnumerable<SourceNode> Lessons(SourceMap? entry) =>
        (entry?["mistakes"]?.Items.OfType<SourceMap>().Select(mistake => mistake["lesson"]).OfType<SourceNode>() ?? []).Concat(entry?["lessons"]?.Items ?? []);
}
