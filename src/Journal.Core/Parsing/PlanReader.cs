using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing;

/// <summary>Reads a plan.</summary>
internal sealed class PlanReader(JournalFolder folder, FileScope scope)
{
    /// <summary>The plan of the scope's file; null, with problems, where it cannot be read.</summary>
    public Plan? Read()
    {
        var name = Path.GetFileNameWithoutExtension(scope.File);
        if (!FileNames.IsFit(name, scope.Start, scope.Log)
            || folder.Text(scope.File, scope.Log) is not { } text
            || YamlReader.Read(text, scope.File, 1, scope.Log) is not { } map)
        {
            return null;
        }

        var fields = new Fields(map, scope, Keys.Plan);
        fields.Wants("title", "Give the plan a title, such as `title: Hand-lever bench shaper`.");
        fields.Wants("parts", "List the parts that you can name so far.");
        return new Plan
        {
            Id = new(name),
            Title = fields.Text("title") ?? Titles.FromId(name),
            File = scope.File,
            Start = fields.Date("start"),
            HoursAWeek = Pace.HoursAWeek(fields),
            Away = Pace.Away(fields),
            Parts = new PartKeyReader(scope, build: null).ReadAll(fields),
            Whole = WholeKeyReader.Read(fields, scope),
            Publish = fields.Publication("publish"),
        };
    }
}
