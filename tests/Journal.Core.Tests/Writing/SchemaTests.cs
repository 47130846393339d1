using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Parsing.Yaml;
using Json.Schema;

namespace Journal.Core.Tests.Writing;

public partial class SchemaTests
{
    private static readonly string Root = Demo.Root();
    private static readonly Dictionary<string, JsonSchema> Schemas = new[] { "entry", "build", "tools", "journal", "plan" }
        .ToDictionary(name => name, name => JsonSchema.FromText(Text(name)));

    public static TheoryData<string, string> DemoFiles
    {
        get
        {
            var demo = Path.Combine(Root, "journal");
            var data = new TheoryData<string, string>();
            foreach (var file in Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories).Where(path => !path.Contains("scenes", StringComparison.Ordinal)).Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/')))
            {
                if (KindOf(file) is { } kind)
                {
                    data.Add(file, kind);
                }
            }

            return data;
        }
    }

    // The keys of each file as the program reads them, and where the schema lists them.
    public static TheoryData<string, string, string[]> KeyLists => new()
    {
        { "journal", "", Keys.Journal }, { "journal", "word", Keys.NewWord }, { "journal", "operation", Keys.NewOperation }, { "journal", "destination", Keys.Destination },
        { "build", "", Keys.Build }, { "build", "part", Keys.Part }, { "build", "mate", Keys.Mate }, { "build", "video", Keys.Video },
        { "build", "chapter", Keys.Chapter }, { "build", "threePoints", Keys.ThreePoints },
        { "plan", "", Keys.Plan }, { "plan", "part", Keys.Part }, { "plan", "threePoints", Keys.ThreePoints },
        { "tools", "tool", Keys.Tool },
        { "entry", "", Keys.Entry }, { "entry", "job", Keys.Job }, { "entry", "tool", Keys.Tool }, { "entry", "mistake", Keys.Mistake },
        { "entry", "mistakesLesson", Keys.MistakesLesson }, { "entry", "lesson", Keys.Lesson }, { "entry", "snag", Keys.Snag },
        { "entry", "trial", Keys.Trial }, { "entry", "reading", Keys.Reading }, { "entry", "setting", Keys.Setting },
        { "entry", "purchase", Keys.Purchase }, { "entry", "photo", Keys.Photo }, { "entry", "mark", Keys.Mark },
    };

    [Theory]
    [MemberData(nameof(DemoFiles))]
    public void Schema_EachFileOfTheDemo_IsValid(string file, string schema)
    {
        var result = Schemas[schema].Evaluate(Json(file), new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, string.Join('\n', result.Details?.Where(detail => detail.Errors is not null).Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}") ?? []));
    }

    [Theory]
    [InlineData("entry", """{"hours": "2h", "hour": 2}""")]
    [InlineData("entry", """{"mistakes": [{"cause": "haste"}]}""")]
    [InlineData("entry", """{"mistakes": [{"what": "x", "outcome": "binned"}]}""")]
    [InlineData("entry", """{"publish": "soon"}""")]
    [InlineData("build", """{"title": "x", "parts": [{"id": "Gib Screw"}]}""")]
    [InlineData("build", """{"status": "finished"}""")]
    [InlineData("journal", """{"title": "x", "currency": "euro"}""")]
    [InlineData("plan", """{"title": "x"}""")]
    [InlineData("tools", """[{"title": "x"}]""")]
    public void Schema_WhatTheReaderRefuses_IsNotValid(string schema, string json) =>
        Assert.False(Schemas[schema].Evaluate(JsonDocument.Parse(json).RootElement).IsValid);

    [Theory]
    [MemberData(nameof(KeyLists))]
    public void Schema_Keys_AreThoseThatTheReaderKnows(string schema, string definition, string[] keys)
    {
        var root = JsonNode.Parse(Text(schema))!;
        var at = definition.Length == 0 ? root : root["$defs"]![definition]!;

        Assert.Equal(keys.Order(StringComparer.Ordinal), at["properties"]!.AsObject().Select(pair => pair.Key).Order(StringComparer.Ordinal));
        Assert.False(at["additionalProperties"]!.GetValue<bool>());
    }

    [Fact]
    public void KeysPage_SchemasAndVocabulary_SaysThem()
    {
        var page = Path.Combine(Root, "docs", "keys.md");
        var text = KeysPage.Text(Text);
        if (Environment.GetEnvironmentVariable("JOURNAL_WRITE_KEYS") is not null)
        {
            File.WriteAllText(page, text);
        }

        Assert.Equal(text, File.ReadAllText(page));
    }

    [Fact]
    public void Schema_Choices_AreThoseOfTheProgram()
    {
        Same<Outcome>("entry", "$defs/mistake/properties/outcome");
        Same<Verdict>("entry", "$defs/lesson/properties/verdict");
        Same<Verdict>("entry", "$defs/mistakesLesson/properties/verdict");
        Same<PurchaseKind>("entry", "$defs/purchase/properties/kind");
        Same<Got>("tools", "$defs/tool/properties/got");
        Same<Need>("tools", "$defs/tool/properties/need");
        Same<BuildStatus>("build", "properties/status");
        Same<Units>("build", "properties/units");
        Same<Units>("journal", "properties/units");
        Same<TimeKind>("journal", "$defs/operation/properties/kind");
    }

    private static void Same<T>(string schema, string path)
        where T : struct, Enum
    {
        var at = path.Split('/').Aggregate(JsonNode.Parse(Text(schema))!, (node, step) => node[step]!);
        Assert.Equal(EnumNames.All<T>().Order(StringComparer.Ordinal), at["enum"]!.AsArray().Select(word => word!.GetValue<string>()).Order(StringComparer.Ordinal));
    }

    private static string? KindOf(string file) => Path.GetFileName(file) switch
    {
        "journal.yaml" => "journal",
        "tools.yaml" => "tools",
        "build.yaml" => "build",
        _ when file.StartsWith("journal/plans/", StringComparison.Ordinal) && file.EndsWith(".yaml", StringComparison.Ordinal) => "plan",
        var name when name.EndsWith(".md", StringComparison.Ordinal) => "entry",
        _ => null,
    };

    private static JsonElement Json(string file)
    {
        var text = File.ReadAllText(Path.Combine(Root, file));
        var yaml = file.EndsWith(".md", StringComparison.Ordinal) ? FrontMatter.Split(text, file, new ProblemLog())!.Yaml : text;
        return JsonSerializer.SerializeToElement(Json(YamlReader.ReadAny(yaml, new ProblemLog())!));
    }

    // As editors type values: the core schema of YAML 1.2.2, 10.3.
    private static JsonNode? Json(Node node) => node switch
    {
        MapNode map => new JsonObject(map.Pairs.Select(pair => KeyValuePair.Create(pair.Key.Text, Json(pair.Value)))),
        ListNode list => new JsonArray([.. list.Nodes.Select(Json)]),
        TextNode { IsQuoted: true } text => JsonValue.Create(text.Text),
        TextNode { IsBlank: true } => null,
        TextNode { Text: "true" or "false" } text => JsonValue.Create(text.Text == "true"),
        TextNode text when Number().IsMatch(text.Text) => JsonValue.Create(decimal.Parse(text.Text, CultureInfo.InvariantCulture)),
        TextNode text => JsonValue.Create(text.Text),
        _ => throw new InvalidOperationException(),
    };

    private static string Text(string schema) => File.ReadAllText(Path.Combine(Root, "shared", "schemas", $"{schema}.schema.json"));

    [GeneratedRegex(@"^[-+]?[0-9]+(\.[0-9]+)?$")]
    private static partial Regex Number();
}
