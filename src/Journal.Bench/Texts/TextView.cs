using System.Text;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Core.Parsing;
using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;
using Journal.Core.Writing.Texts;
using Journal.Site.Preview;

namespace Journal.Bench.Texts;

/// <summary>The pages of text files, made from the journal.</summary>
internal static class TextView
{
    /// <summary>All files.</summary>
    public static FilesPage List(Workshop workshop, Frame frame)
    {
        var (reading, journal) = (workshop.Journal.Read(), workshop.Journal.Journal);
        var problems = reading.Problems.CountBy(problem => problem.Place.File).ToDictionary(StringComparer.Ordinal);
        var titles = journal.Entries.ToDictionary(entry => entry.File, entry => entry.Title, StringComparer.Ordinal);
        foreach (var plan in journal.Plans)
        {
            titles[plan.File] = plan.Title;
        }

        FileRow Row(JournalFile file) => new(
            $"{Addresses.Files}/{TextFiles.IdOf(file.File)}",
            titles.GetValueOrDefault(file.File) ?? Path.GetFileName(file.File),
            file.File,
            problems.TryGetValue(file.File, out var count) ? Casing.Capital(Count.Of(count, "problem")) : null);

        var files = JournalFiles.Of(workshop.Folder);
        return new FilesPage(frame,
        [
            new FileGroup(journal.Title, [.. files.Where(file => file.Build is null).Select(Row)]),
            .. files.Where(file => file.Build is not null).GroupBy(file => file.Build!).Select(build => new FileGroup(
                journal.Builds.FirstOrDefault(one => one.Id.Value == build.Key)?.Title ?? build.Key,
                [.. build.Where(file => file.Kind == JournalFileKind.Build).Concat(build.Where(file => file.Kind == JournalFileKind.Entry).Reverse()).Select(Row)])),
        ]);
    }

    /// <summary>A file as text.</summary>
    public static TextPage Of(Workshop workshop, Frame frame, JournalFile file, string text) => new()
    {
        Frame = frame,
        File = file.File,
        Id = TextFiles.IdOf(file.File),
        IsEntry = file.Kind == JournalFileKind.Entry,
        Text = text,
        Seen = "",
        Problems = Problems(workshop.Journal.Read().Problems, file.File, text),
        Preview = $"{Addresses.Site}/{DraftPreview.PageOf(file)}",
        Editor = workshop.Look.AddressOf("editor.js"),
        Script = workshop.Look.AddressOf("texts.js"),
    };

    /// <summary>A file as it is being typed: its problems, and its page of the site.</summary>
    public static TypedLook Look(Workshop workshop, JournalFile file, string text)
    {
        var look = workshop.Preview.Look(new TypedFile(file.File, text), DraftPreview.PageOf(file), workshop.Today);
        var elsewhere = look.Problems.Count(problem => problem.Severity == Severity.Error && problem.Place.File != file.File);
        return new TypedLook(Problems(look.Problems, file.File, text), elsewhere, look.Page is { } page ? Encoding.UTF8.GetString(page.Span) : null, $"{Addresses.Site}/{DraftPreview.PageOf(file)}");
    }

    /// <summary>The problems of one file.</summary>
    private static IReadOnlyList<ProblemView> Problems(IReadOnlyList<Problem> all, string file, string text) =>
    [
        .. all.Where(problem => problem.Place.File == file).Select(problem => new ProblemView(
            problem.Severity == Severity.Error ? "error" : "warning",
            problem.Place.Line,
            problem.Place.Column,
            problem.Message,
            problem.Remedy,
            Mend.Of(problem, text) is { } mend ? new MendView(mend.Line, mend.Column, mend.Length, mend.Word) : null)),
    ];
}
