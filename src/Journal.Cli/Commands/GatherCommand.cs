using System.CommandLine;
using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Pictures;
using Journal.Site.Photos;

namespace Journal.Cli.Commands;

/// <summary><c>journal gather</c>: new pictures to the evenings when they were taken.</summary>
internal static class GatherCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var folder = InOption.Create();
        var from = new Argument<string>("photo folder") { Description = "The folder with the pictures; they are copied, never moved." };
        var captions = new Option<bool>("--captions") { Description = "Use the captions in the pictures. Default: each is offered; in a script, none is used." };
        var trial = new Option<bool>("--dry-run") { Description = "Only show what would be done." };
        var command = new ExampledCommand("gather", "Copy new pictures to the evenings on which they were taken.", "journal gather phone --dry-run") { from, captions, trial, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open => Gather(open, asked.GetValue(from)!, asked.GetValue(captions), asked.GetValue(trial), terminal)));
        return command;
    }

    private static int Gather(OpenJournal open, string named, bool takesCaptions, bool isTrial, Terminal terminal)
    {
        var from = Path.GetFullPath(named, terminal.Folder);
        if (!Directory.Exists(from))
        {
            throw new UsageException($"There is no folder {from}. Give the folder with your pictures.");
        }

        var files = BehindLinks.FilesBelow(from).Where(path => !Path.GetFileName(path).StartsWith('.')).ToList();
        var pictures = files.Where(PictureShelf.IsPicture).Select(path => PictureTimes.Of(path, open.Clock)).ToList();
        var print = new Printout(terminal);
        pictures = takesCaptions ? pictures : Offered(open, pictures, isTrial, terminal);
        var fates = Run(open, pictures, isTrial, terminal);
        Tell(fates, from, isTrial, print);
        if (files.Where(IsPhonePicture).ToList() is { Count: > 0 } phones)
        {
            print.Gap();
            print.Say($"{Capital(Count.Of(phones.Count, "picture"))} in a format that web pages cannot show ({string.Join(", ", phones.Select(Path.GetExtension).Distinct())}). Export them from the phone as JPEG, then gather again.");
        }

        return fates.Any(fate => fate.Fate == Fate.Refused) ? ExitStatus.Flawed : ExitStatus.Well;
    }

    // A camera's caption may be the maker's own words, or the camera's name.
    private static List<TakenPicture> Offered(OpenJournal open, List<TakenPicture> pictures, bool isTrial, Terminal terminal)
    {
        if (pictures.All(picture => picture.Caption is null))
        {
            return pictures;
        }

        var offered = Gathering.Run(open.Folder, open.Journal, pictures, isTrial: true).Where(fate => fate.Fate == Fate.Added).Select(fate => fate.Picture).Where(picture => picture.Caption is not null).ToList();
        if (!terminal.CanAsk || isTrial)
        {
            foreach (var picture in offered)
            {
                terminal.Complain($"{Path.GetFileName(picture.Path)} brings the caption “{picture.Caption}”; `--captions` takes it.");
            }

            return [.. pictures.Select(picture => picture with { Caption = null })];
        }

        var taken = offered.Where(picture => new Questions(terminal).YesOrNo($"{Path.GetFileName(picture.Path)} says “{picture.Caption}”. Take it as the caption?", offered: true)).Select(picture => picture.Path).ToHashSet(StringComparer.Ordinal);
        return [.. pictures.Select(picture => taken.Contains(picture.Path) ? picture : picture with { Caption = null })];
    }

    private static IReadOnlyList<Gathered> Run(OpenJournal open, List<TakenPicture> pictures, bool isTrial, Terminal terminal)
    {
        if (isTrial)
        {
            return Gathering.Run(open.Folder, open.Journal, pictures, isTrial);
        }

        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        return Gathering.Run(open.Folder, open.Journal, pictures, isTrial);
    }

    private static void Tell(IReadOnlyList<Gathered> fates, string from, bool isTrial, Printout print)
    {
        string Name(Gathered fate) => Path.GetRelativePath(from, fate.Picture.Path);
        foreach (var entry in fates.Where(fate => fate.Fate == Fate.Added).GroupBy(fate => fate.Entry))
        {
            print.Heading(entry.Key!);
            foreach (var fate in entry)
            {
                print.Hang("  ", $"{Name(fate)} as {fate.As}{(fate.Picture.IsFileTime ? ", by the file's time" : "")}");
            }
        }

        List(fates, Fate.Refused, "Not added", fate => $"{Name(fate)}{(fate.Entry is null ? "" : $" for {fate.Entry}")}: {fate.Why}", print);
        List(fates, Fate.NoEntry, "No entry for that evening", fate => $"{Name(fate)}, {Evening(fate)}{(fate.Picture.IsFileTime ? " by the file's time" : "")}", print);
        print.Gap();
        print.Say(LastLine(fates, isTrial));
    }

    private static void List(IReadOnlyList<Gathered> fates, Fate fate, string heading, Func<Gathered, string> line, Printout print)
    {
        if (fates.All(one => one.Fate != fate))
        {
            return;
        }

        print.Heading(heading);
        foreach (var one in fates.Where(one => one.Fate == fate))
        {
            print.Hang("  ", line(one));
        }
    }

    private static string LastLine(IReadOnlyList<Gathered> fates, bool isTrial)
    {
        int Of(Fate fate) => fates.Count(one => one.Fate == fate);
        if (fates.Count == 0)
        {
            return "There are no pictures in that folder.";
        }

        var there = Of(Fate.AlreadyThere) == 0 ? "" : $"; {Of(Fate.AlreadyThere).ToString(CultureInfo.InvariantCulture)} already in the journal";
        return $"{Capital(Count.Of(Of(Fate.Added), "picture"))} {(isTrial ? "would be added" : "added")}{there}.";
    }

    private static string Evening(Gathered fate) => Wording.Written.Date(fate.Picture.Evening);

    private static string Capital(string text) => Casing.Capital(text);

    private static bool IsPhonePicture(string path) => Path.GetExtension(path).ToUpperInvariant() is ".HEIC" or ".HEIF" or ".AVIF" or ".DNG";
}
