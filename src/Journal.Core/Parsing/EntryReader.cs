using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing;

/// <summary>An entry as its own file tells it, before its claims are held against the other files.</summary>
internal sealed record EntryDraft(Entry Entry, IReadOnlyList<Tool> ToolsDefined);

/// <summary>Reads one entry.</summary>
internal sealed class EntryReader(JournalFolder folder, Id<Build> build, PartsList parts, FileScope scope)
{
    /// <summary>The entry of the scope's file; null, with problems, where too little of it can be read.</summary>
    public EntryDraft? Read()
    {
        // The text first: even of a file whose name cannot be an address it tells which ids stand in it.
        var name = Path.GetFileNameWithoutExtension(scope.File);
        scope.Text = folder.Text(scope.File, scope.Log);
        if (!FileNames.IsFit(name, scope.Start, scope.Log)
            || scope.Text is null
            || FrontMatter.Split(scope.Text, scope.File, scope.Log) is not { } halves
            || YamlReader.Read(halves.Yaml, scope.File, halves.YamlLine, scope.Log) is not { } map)
        {
            return null;
        }

        if (map.Pairs.Count == 0)
        {
            scope.Log.Add(ProblemTable.FrontMatterEmpty, map.Place);
            return null;
        }

        var fields = new Fields(map, scope, Keys.Entry);
        return Date(fields, name) is { } date ? Read(fields, new Id<Entry>(name), date, halves) : null;
    }

    private EntryDraft Read(Fields fields, Id<Entry> id, DateOnly date, FrontMatter halves)
    {
        scope.Definitions.Add(new Definition(IdKind.Entry, build, id.Value, scope.Start));
        var jobs = new JobKeyReader(scope, new EntryRef(build, id), date, parts);
        var (body, inText) = new BodyReader(scope.File, scope.Log).Read(halves.Body, halves.BodyLine);
        var entry = new Entry
        {
            Id = id,
            Build = build,
            File = scope.File,
            Title = fields.Text("title") ?? TitleFrom(id),
            Date = date,
            Jobs = jobs.ReadAll(fields),
            Body = body,
        };
        var (mistakes, lessons) = new LessonKeyReader(scope, entry).Read(fields);
        var photos = new PhotoFiles(folder, scope).Find(new PhotoKeyReader(scope).ReadAll(fields), inText);
        return new EntryDraft(
            new RemarkKeyReaders(scope, entry, parts).Read(fields) with { Mistakes = mistakes, Lessons = lessons, Photos = photos },
            jobs.ToolsDefined);
    }

    private DateOnly? Date(Fields fields, string name)
    {
        var (given, inName) = (fields.Date("date"), Dates.AtStartOf(name));
        if (given is null && inName is null)
        {
            if (!fields.Has("date"))
            {
                scope.Log.Add(ProblemTable.DateMissing, fields.Place);
            }

            return null;
        }

        var place = fields["date"]?.Place ?? scope.Start;
        if (given is not null && inName is not null && given != inName)
        {
            scope.Log.Add(ProblemTable.DateDiffers, place, Dates.Write(given.Value), Dates.Write(inName.Value));
        }

        var date = given ?? inName!.Value;
        if (date > scope.Today)
        {
            scope.Log.Add(ProblemTable.DateInFuture, place, Dates.Write(date), Dates.Write(scope.Today));
        }

        return date;
    }

    private static string TitleFrom(Id<Entry> id)
    {
        const int Date = 10;
        return Dates.AtStartOf(id.Value) is null ? id.ToTitle() : id.Value.Length > Date + 1 ? Titles.FromId(id.Value[(Date + 1)..]) : id.Value;
    }
}
