using Journal.Core.Model;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads a tool: a line of the crib, or one that an entry defines with <c>made</c>.</summary>
internal sealed class ToolKeyReader(FileScope scope)
{
    private readonly VocabularyKeyReader words = new(scope);

    /// <summary>A tool of the crib, or one that an entry defines; null, and reported, without a usable id.</summary>
    public Tool? Read(Fields fields, EntryRef? definedIn)
    {
        if (!fields.Wants("id", "Give the tool a short name, such as `id: quill-block`.") || fields.NewId(fields["id"]!, "id") is not { } id)
        {
            return null;
        }

        scope.Definitions.Add(new Definition(IdKind.Tool, null, id, fields["id"]!.Place));
        return new Tool
        {
            Id = new(id),
            Title = fields.Text("title") ?? Titles.FromId(id),
            Kind = words.ToolKind(fields),
            Got = fields.Choice<Got>("got") ?? (definedIn is null ? null : Got.Made),
            Cost = fields.Cost("cost"),
            Since = fields.Date("since"),
            Need = fields.Choice<Need>("need") ?? Need.Handy,
            Resolution = DimensionKeyReader.Resolution(fields, scope),
            Link = fields.Address("link"),
            Disclose = fields.Text("disclose"),
            BorrowedFrom = fields.Text("borrowed-from"),
            Due = fields.Date("due"),
            Formerly = fields.FormerIds(id, IdKind.Tool, null),
            DefinedIn = definedIn,
        };
    }

    /// <summary>The crib: a list of tools.</summary>
    public static IReadOnlyList<Tool> ReadCrib(ListNode crib, FileScope scope)
    {
        var shape = new ToolKeyReader(scope);
        var list = new Fields(new MapNode(crib.Place, []), scope);
        return [.. crib.Nodes.Select(node => list.Map(node, Keys.Tool)).OfType<Fields>().Select(fields => shape.Read(fields, null)).OfType<Tool>().DistinctBy(tool => tool.Id)];
    }
}
