using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Trade;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>
/// Gives a thing another name wherever it is named: in lists, in keys, in links of texts and in plans. What it was called is
/// kept under <c>formerly</c>.
/// </summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="journal">The journal as read.</param>
public sealed class Renaming(string folder, MakerJournal journal)
{
    private readonly NamedFiles files = new(folder, journal);

    /// <summary>Renames a part of a build.</summary>
    public NameOutcome Part(Build build, string old, string name)
    {
        if (!build.HasPart(new(old)))
        {
            return NameOutcome.Refused($"{build.Title} has no part `{old}`. {Suggestion.For(old, [.. build.Parts.Select(part => part.Id.Value)], "parts")}");
        }

        return WhyUnfit(old, name)
            ?? (name == "whole" ? NameOutcome.Refused("`whole` means the build as a whole. Choose another name.")
            : build.HasPart(new(name)) ? NameOutcome.Refused($"{build.Title} has a part `{name}` already.")
            : build.Parts.FirstOrDefault(part => part.Id.Value != old && part.Formerly.Contains(name)) is { } other ? TakenFormerly(name, other.Id.Value)
            : Rename(old, name, use => use.Kind == NameKind.Part && use.Build == build.Id.Value));
    }

    /// <summary>Renames a tool.</summary>
    public NameOutcome Tool(string old, string name)
    {
        var known = journal.Tools.Select(tool => tool.Id.Value).ToList();
        if (!known.Contains(old))
        {
            return NameOutcome.Refused($"The crib has no `{old}`. {Suggestion.For(old, known, "tools")}");
        }

        return WhyUnfit(old, name)
            ?? (known.Contains(name) ? NameOutcome.Refused($"There is a tool `{name}` already. If both are one tool: `journal merge tool {old} {name}`.")
            : journal.Tools.FirstOrDefault(tool => tool.Id.Value != old && tool.Formerly.Contains(name)) is { } other ? TakenFormerly(name, other.Id.Value)
            : Rename(old, name, use => use.Kind == NameKind.Tool));
    }

    /// <summary>Renames an operation that the journal added.</summary>
    public NameOutcome Operation(string old, string name)
    {
        var own = journal.Vocabulary.Operations.Ids.Select(id => id.Value).Where(id => !VocabularyLoader.Shared.Operations.TryFind(id, out _)).ToList();
        if (!own.Contains(old))
        {
            return NameOutcome.Refused(journal.Vocabulary.Operations.TryFind(old, out _)
                ? $"`{old}` is a word that every journal knows; only your own can have another name. {(own.Count == 0 ? "You have added none." : $"Yours: {string.Join(", ", own)}.")}"
                : $"There is no operation `{old}` of your own. {Suggestion.For(old, own, "operations of your own")}");
        }

        return WhyUnfit(old, name)
            ?? (journal.Vocabulary.Operations.TryFind(name, out var taken) ? NameOutcome.Refused($"There is an operation `{name}` already{(taken.Value == name ? "" : $": another spelling of `{taken}`")}.")
            : Rename(old, name, use => use.Kind == NameKind.Operation));
    }

    /// <summary>Renames a lesson, or gives one an id that had none.</summary>
    public NameOutcome Lesson(string old, string name)
    {
        var lessons = journal.Entries.SelectMany(entry => entry.Lessons).ToList();
        if (lessons.Find(lesson => lesson.Id.Value == old) is not { } lesson)
        {
            return NameOutcome.Refused($"There is no lesson `{old}`. {Suggestion.For(old, [.. lessons.Select(one => one.Id.Value)], "lessons")}");
        }

        return WhyUnfit(old, name)
            ?? (lessons.Exists(one => one.Id.Value == name) ? NameOutcome.Refused($"There is a lesson `{name}` already.")
            : lessons.Find(one => one.Id.Value != old && one.Formerly.Contains(name)) is { } other ? TakenFormerly(name, other.Id.Value)
            : Rename(old, name, use => use.Kind == NameKind.Lesson, lesson));
    }

    /// <summary>Renames a build and its folder; a plan that it was begun from goes with it, and so do lessons that are numbered after it.</summary>
    public NameOutcome Build(string old, string name)
    {
        if (journal.Builds.FirstOrDefault(build => build.Id.Value == old) is not { } build)
        {
            return NameOutcome.Refused($"There is no build `{old}`. {Suggestion.For(old, [.. journal.Builds.Select(one => one.Id.Value)], "builds")}");
        }

        var place = build.Folder.LastIndexOf('/') is >= 0 and var slash ? build.Folder[..(slash + 1)] : "";
        var (plan, planFile) = (journal.Plans.FirstOrDefault(plan => plan.Id.Value == old), $"plans/{name}.yaml");
        return WhyUnfit(old, name)
            ?? (!Lines.MayNameABuild(name) ? NameOutcome.Refused($"The name `{name}` is taken: the site, or Windows, uses it for something else. Choose another.")
            : journal.Builds.Any(one => one.Id.Value == name) ? NameOutcome.Refused($"There is a build `{name}` already.")
            : journal.Builds.FirstOrDefault(one => one.Id != build.Id && one.Formerly.Contains(name)) is { } other ? TakenFormerly(name, other.Id.Value)
            : journal.Plans.Any(one => one.Id.Value == name) ? NameOutcome.Refused($"There is a plan `{name}` already, which would count as begun. Choose another name.")
            : Path.Exists(Path.Combine(folder, place + name)) || Path.Exists(Path.Combine(folder, planFile)) ? NameOutcome.Refused($"There is something called `{name}` in the journal already. Move it away, or choose another name.")
            : RenameBuild(build, name, [new PathMove(build.Folder, place + name), .. plan is null ? [] : new[] { new PathMove(plan.File, planFile) }]));
    }

    private static NameOutcome? WhyUnfit(string old, string name) =>
        old == name ? NameOutcome.Refused($"`{old}` has that name already; nothing was changed.")
        : !Id<object>.HasRightForm(name) ? NameOutcome.Refused($"`{name}` is not an id. Write lower-case words joined by hyphens, such as gib-screw.")
        : FileNames.IsReserved(name) ? NameOutcome.Refused($"Windows keeps the name `{name}` for itself. Choose another.")
        : null;

    private static NameOutcome TakenFormerly(string name, string other) =>
        NameOutcome.Refused($"`{name}` is what `{other}` was called formerly, and its old address leads there. Choose another name.");

    private NameOutcome Rename(string old, string name, Func<NameUse, bool> isOfThatKind, Lesson? lesson = null)
    {
        bool IsMeant(NameUse use) => use.Name == old && isOfThatKind(use);
        var isUnnamed = lesson is not null && old.StartsWith($"{lesson.Entry.Build}-{lesson.Entry.Entry}-", StringComparison.Ordinal);
        var home = isUnnamed ? journal.Entries.First(entry => entry.Ref == lesson!.Entry) : null;
        var (found, unreadable) = files.Holding([old], home?.File);
        var changes = new List<FileChange>();
        foreach (var file in found)
        {
            var uses = file.Uses.Where(IsMeant).ToList();
            var splices = uses.Where(use => !(use.IsDefinition && use.Holder is SourceText)).Select(use => new Splice(use.Start, use.Length, name)).ToList();
            foreach (var definition in uses.Where(use => use.IsDefinition))
            {
                if (Define(file, definition, old, name) is not { } kept)
                {
                    return NotDared(file, definition.Start);
                }

                splices.AddRange(kept);
            }

            if (file.File == home?.File && uses.TrueForAll(use => !use.IsDefinition))
            {
                if (LessonName.Give(file, home, lesson!, name) is not { } given)
                {
                    return NotDared(file, file.Front);
                }

                splices.AddRange(given);
            }

            if (uses.Find(use => !file.SaysPlainly(use)) is { } odd)
            {
                return NotDared(file, odd.Start);
            }

            if (splices.Count > 0)
            {
                changes.Add(file.With(splices));
            }
        }

        return unreadable is not null ? Unreadable(unreadable) : new NameOutcome(new NameChange(changes, []), "");
    }

    // An id that stands alone becomes two keys.
    private static IEnumerable<Splice>? Define(NamedFile file, NameUse definition, string old, string name) =>
        definition.Holder is SourceText alone
            ? [new Splice(file.Front + alone.Start, alone.End - alone.Start, YamlText.Map(("id", name), ("formerly", old)))]
            : FormerName.Put(file.Yaml, definition.Holder!, [old])?.Select(splice => splice.Behind(file.Front));

    private NameOutcome RenameBuild(Build build, string name, IReadOnlyList<PathMove> moves)
    {
        var old = build.Id.Value;
        var unnamed = build.Entries.SelectMany(entry => entry.Lessons.Select(lesson => lesson.Id.Value).Where(id => id.StartsWith($"{old}-{entry.Id}-", StringComparison.Ordinal))).ToHashSet();
        var (found, unreadable) = files.Holding([old], $"{build.Folder}/build.yaml");
        var changes = new List<FileChange>();
        foreach (var file in found)
        {
            var uses = file.Uses.Where(use => (use.Kind == NameKind.Build && use.Name == old) || (use.Kind == NameKind.Lesson && unnamed.Contains(use.Name))).ToList();
            if (uses.Find(use => !file.SaysPlainly(use)) is { } odd)
            {
                return NotDared(file, odd.Start);
            }

            var splices = uses.Select(use => new Splice(use.Start, old.Length, name)).ToList();
            if (file.File == $"{build.Folder}/build.yaml")
            {
                if (FormerBuild(file, old) is not { } kept)
                {
                    return NotDared(file, 0);
                }

                splices.AddRange(kept);
            }

            if (splices.Count > 0)
            {
                changes.Add(file.With(splices));
            }
        }

        return unreadable is not null ? Unreadable(unreadable)
            : new NameOutcome(new NameChange(changes, moves), "");
    }

    private static IReadOnlyList<Splice>? FormerBuild(NamedFile file, string old) =>
        file.Tree is not SourceMap map ? null
            : map["formerly"] is not null || map.IsInBraces ? FormerName.Put(file.Yaml, map, [old])
            : [Splice.At(file.Text.Length, $"{(file.Text.EndsWith('\n') ? "" : "\n")}formerly: {old}{(file.Text.EndsWith("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n")}")];

    private static NameOutcome Unreadable(string file) =>
        NameOutcome.Refused($"{file} cannot be read, and the name may stand in it. `journal check` says what is wrong there; nothing was changed.");

    private static NameOutcome NotDared(NamedFile file, int place) =>
        NameOutcome.Refused($"{file.File}:{file.LineOf(Math.Clamp(place, 0, file.Text.Length))}: the name stands there in a way that this program does not dare to touch. Write it plainly, then try again; nothing was changed.");
}
