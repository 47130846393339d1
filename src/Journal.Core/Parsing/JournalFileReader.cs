using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing;

/// <summary>Reads <c>journal.yaml</c>: what the journal is, and the words that it adds to the vocabulary.</summary>
internal sealed partial class JournalFileReader(JournalFolder folder, FileScope scope)
{
    private const string FileName = "journal.yaml";

    /// <summary>The journal without builds, tools and plans; null, with problems, where it cannot be read.</summary>
    public MakerJournal? Read()
    {
        if (folder.Text(FileName, scope.Log) is not { } text || YamlReader.Read(text, FileName, 1, scope.Log) is not { } map)
        {
            return null;
        }

        var fields = new Fields(map, scope, Keys.Journal);
        fields.Wants("title", "Give the journal a title, such as `title: The Lean-to`.");
        var title = fields.Text("title") ?? "Journal";
        return new MakerJournal
        {
            Title = title,
            Id = Id(fields) ?? NameBasedUuid.OfJournal(title),
            Maker = fields.Text("maker") ?? "",
            Units = (fields.Choice<Units>("units") ?? Units.Mm).ToUnit(),
            Currency = Checked(fields, "currency", Currency(), "Write the three letters of ISO 4217, such as `EUR`.") ?? "EUR",
            TimeZone = ZoneOf(fields),
            Address = Address(fields),
            Vocabulary = WithOwnWords(fields),
            Destinations = DestinationKeyReader.ReadAll(fields, scope),
        };
    }

    private Guid? Id(Fields fields)
    {
        if (fields.Text("id") is not { } text)
        {
            return null;
        }

        if (Guid.TryParseExact(text, "D", out var id))
        {
            return id;
        }

        scope.Log.Add(ProblemTable.NotAnUuid, fields["id"]!.Place, text);
        return null;
    }

    private string? Checked(Fields fields, string key, Regex form, string remedy)
    {
        if (fields.Text(key) is not { } text || form.IsMatch(text))
        {
            return fields.Text(key);
        }

        scope.Log.Add(ProblemTable.NotAChoice, fields[key]!.Place, text, key, remedy);
        return null;
    }

    private string? ZoneOf(Fields fields)
    {
        var name = Checked(fields, "time-zone", TimeZone(), "Write the IANA name, such as `Europe/Dublin`.");
        if (name is not null && !TimeZoneInfo.TryFindSystemTimeZoneById(name, out _))
        {
            scope.Log.Add(ProblemTable.UnknownTimeZone, fields["time-zone"]!.Place, name);
        }

        return name;
    }

    private static Uri? Address(Fields fields)
    {
        if (fields.Address("address") is not { } address)
        {
            return null;
        }

        var bare = address.GetLeftPart(UriPartial.Path);
        return new Uri(bare.EndsWith('/') ? bare : bare + "/");
    }

    private Vocabulary WithOwnWords(Fields fields)
    {
        var own = scope.Vocabulary;
        return own with
        {
            Operations = own.Operations.With(NewWords<Operation>(fields, "operations", Keys.NewOperation, (id, title, kind, formerly) => new Operation(id, title, kind) { Formerly = formerly })),
            Causes = own.Causes.With(NewWords<Cause>(fields, "causes", Keys.NewWord, (id, title, _, _) => new Cause(id, title))),
            Materials = own.Materials.With(NewWords<MaterialFamily>(fields, "materials", Keys.NewWord, (id, title, _, _) => new MaterialFamily(id, title))),
            ToolKinds = own.ToolKinds.With(NewWords<ToolKind>(fields, "tool-kinds", Keys.NewWord, (id, title, _, _) => new ToolKind(id, title))),
        };
    }

    // A new operation without a kind makes chips: that is what most operations do.
    private static List<(Id<T> Id, T Word)> NewWords<T>(Fields list, string key, string[] known, Func<Id<T>, string, TimeKind, IReadOnlyList<string>, T> create)
    {
        var words = new List<(Id<T>, T)>();
        foreach (var node in list.Items(key))
        {
            var fields = node is TextNode ? null : list.Map(node, known);
            var idNode = node is TextNode ? node : fields?["id"];
            if ((fields is not null && !fields.Wants("id", "Give it an id, such as `id: gilding`.")) || idNode is null || list.NewId(idNode, key) is not { } id)
            {
                continue;
            }

            words.Add((new Id<T>(id), create(new Id<T>(id), fields?.Text("title") ?? Titles.FromId(id), fields?.Choice<TimeKind>("kind") ?? TimeKind.Cutting, fields?.FormerIds(id, IdKind.Operation, null) ?? [])));
        }

        return words;
    }

    [GeneratedRegex("^[A-Z]{3}$", RegexOptions.CultureInvariant)]
    private static partial Regex Currency();

    [GeneratedRegex("^[A-Za-z0-9_+-]+(?:/[A-Za-z0-9_+-]+)*$", RegexOptions.CultureInvariant)]
    private static partial Regex TimeZone();
}
