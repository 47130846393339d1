using System.Diagnostics;
using System.Runtime.Versioning;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Cli.Tests.Writing;

public class GatherTests
{
    private const string Entry = "\uFEFF---\r\ntitle:  'Odd  spacing'   # a remark\r\npart: head\r\nhours: 2h\r\n# last\r\n---\r\nText.\r\n";

    [Fact]
    public void Gather_NewPictures_AreCopiedAndAddedByteForByte()
    {
        using var bench = new AtTheBench("Europe/Dublin");
        using var phone = JournalOnDisk.Bare();
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        Picture(phone, "IMG_1.jpg", 1, "2025:10:03 21:14:05");
        Picture(phone, "IMG_2.JPEG", 2, "2025:10:03 21:14:50");
        Picture(phone, "late/IMG_3.jpg", 3, "2025:10:04 03:30:00");
        Picture(phone, "abroad.jpg", 4, "2025:10:03 23:00:00", "+03:00");
        Picture(phone, "twin-of-1.jpg", 1, "2025:10:03 21:14:05");
        Picture(phone, "other-day.jpg", 5, "2025:01:01 12:00:00");

        var trial = bench.Ask("gather", phone.Folder, "--dry-run");
        Assert.Equal("4 pictures would be added; 1 already in the journal.", trial.Lines[^1]);
        Assert.False(Directory.Exists(Path.Combine(bench.Disk.Folder, "drill", "photos")));

        var gathered = bench.Ask("gather", phone.Folder);

        Assert.Equal(0, gathered.Status);
        Assert.Contains("other-day.jpg, 2025-01-01", gathered.Out, StringComparison.Ordinal);
        var added = string.Concat(new[] { "2025-10-03-2100", "2025-10-03-2114", "2025-10-03-2114-2", "2025-10-04-0330" }.Select(name => $"  - photos/{name}.jpg\r\n"));
        Assert.Equal(Entry.Replace("---\r\nText", $"photos:\r\n{added}---\r\nText", StringComparison.Ordinal), System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(Path.Combine(bench.Disk.Folder, "drill/2025-10-03-head.md"))));
        Assert.Equal(File.ReadAllBytes(Path.Combine(phone.Folder, "late/IMG_3.jpg")), File.ReadAllBytes(Path.Combine(bench.Disk.Folder, "drill/photos/2025-10-04-0330.jpg")));
        Assert.Empty(bench.Problems());

        Assert.Equal("No pictures added; 5 already in the journal.", bench.Ask("gather", phone.Folder).Lines[^1]);
    }

    // A caption in the picture may be the maker's own words, or only the camera's name: it is offered, never taken unasked.
    [Fact]
    public void Gather_PicturesThatBringCaptions_OffersThem()
    {
        using var phone = JournalOnDisk.Bare();
        Picture(phone, "own.jpg", 1, "2025:10:03 21:14:05", change: metadata => metadata.ExifProfile!.SetValue(ExifTag.ImageDescription, "The bore, at last"));
        Picture(phone, "camera.jpg", 2, "2025:10:03 21:15:05", change: metadata => metadata.ExifProfile!.SetValue(ExifTag.ImageDescription, "WORKSHOP CAMERA 3"));
        Picture(phone, "press.jpg", 3, "2025:10:03 21:16:05", change: metadata => (metadata.IptcProfile = new()).SetValue(SixLabors.ImageSharp.Metadata.Profiles.Iptc.IptcTag.Caption, "Boring bar:\nshort"));
        string Photos(string[]? answers, params string[] options)
        {
            using var bench = new AtTheBench();
            bench.Disk.With("drill/2025-10-03-head.md", "---\npart: head\nhours: 2h\n---\n");
            var told = answers is null ? bench.Ask(["gather", phone.Folder, .. options]) : bench.AskAndAnswer(answers, ["gather", phone.Folder, .. options]);
            Assert.Equal(0, told.Status);
            return told.Error + bench.Text("drill/2025-10-03-head.md");
        }

        const string Head = "---\npart: head\nhours: 2h\nphotos:\n";
        Assert.EndsWith(Head + "  - {file: photos/2025-10-03-2114.jpg, caption: \"The bore, at last\"}\n  - photos/2025-10-03-2115.jpg\n  - {file: photos/2025-10-03-2116.jpg, caption: \"Boring bar: short\"}\n---\n", Photos(["", "no", "yes"]), StringComparison.Ordinal);
        Assert.Equal(
            "own.jpg brings the caption “The bore, at last”; `--captions` takes it.\ncamera.jpg brings the caption “WORKSHOP CAMERA 3”; `--captions` takes it.\npress.jpg brings the caption “Boring bar: short”; `--captions` takes it.\n"
            + Head + "  - photos/2025-10-03-2114.jpg\n  - photos/2025-10-03-2115.jpg\n  - photos/2025-10-03-2116.jpg\n---\n",
            Photos(null));
        Assert.Contains("caption: WORKSHOP CAMERA 3", Photos(null, "--captions"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gather_EntrySavedWhilePicturesAreCopied_KeepsWhatWasSaved()
    {
        using var bench = new AtTheBench("Europe/Dublin");
        using var phone = JournalOnDisk.Bare();
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        var entry = Path.Combine(bench.Disk.Folder, "drill/2025-10-03-head.md");
        for (var i = 0; i < 40; i++)
        {
            Picture(phone, $"IMG_{i}.jpg", (byte)i, $"2025:10:03 21:14:{i:00}");
        }

        // An editor saves as soon as the first picture lies in the journal, long before the last.
        var editor = Task.Run(async () =>
        {
            while (!Directory.Exists(Path.Combine(bench.Disk.Folder, "drill", "photos")))
            {
                await Task.Delay(1);
            }

            await File.WriteAllTextAsync(entry, await File.ReadAllTextAsync(entry) + "Written meanwhile.\r\n");
        });
        var gathered = bench.Ask("gather", phone.Folder);
        await editor;

        Assert.Equal(0, gathered.Status);
        var text = await File.ReadAllTextAsync(entry);
        Assert.EndsWith("Text.\r\nWritten meanwhile.\r\n", text, StringComparison.Ordinal);
        Assert.Equal(40, text.Split("photos/2025-10-03-2114").Length - 1);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Gather_NoTimeInThePicture_TakesThatOfTheFileAndSaysSo()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare();
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        Picture(phone, "plain.png", 1, null);
        File.SetLastWriteTimeUtc(Path.Combine(phone.Folder, "plain.png"), new DateTime(2025, 10, 3, 20, 5, 0, DateTimeKind.Utc));
        Picture(phone, "other.png", 2, null);
        File.SetLastWriteTimeUtc(Path.Combine(phone.Folder, "other.png"), new DateTime(2025, 10, 1, 20, 5, 0, DateTimeKind.Utc));
        phone.With("notes.txt", "no").With("phone.heic", "x");

        var gathered = bench.Ask("gather", phone.Folder);

        Assert.Contains("  plain.png as photos/2025-10-03-2005.png, by the file's time\n", gathered.Out, StringComparison.Ordinal);
        Assert.Contains("other.png, 2025-10-01 by the file's time", gathered.Out, StringComparison.Ordinal);
        Assert.Contains("1 picture in a format that web pages cannot show (.heic).", gathered.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Gather_DamagedPictures_AreToldEachAndTheRestIsAdded()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare();
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        Picture(phone, "IMG_1.jpg", 1, "2025:10:03 21:14:05");
        Picture(phone, "IMG_2.jpg", 2, "2025:10:03 21:15:05");
        Picture(phone, "cut.png", 3, null);
        phone.With("words.jpg", "not a picture");
        DamageExif(Path.Combine(phone.Folder, "IMG_2.jpg"));
        File.WriteAllBytes(Path.Combine(phone.Folder, "cut.png"), File.ReadAllBytes(Path.Combine(phone.Folder, "cut.png"))[..^20]);

        var gathered = bench.Ask("gather", phone.Folder);

        Assert.Equal(1, gathered.Status);
        Assert.Contains("IMG_2.jpg: it is damaged or cut off.", gathered.Out, StringComparison.Ordinal);
        Assert.Contains("cut.png: its end is missing: copy it again from the camera.", gathered.Out, StringComparison.Ordinal);
        Assert.Contains("words.jpg: it is not a JPEG, PNG, WebP, GIF, BMP or TIFF file, whatever its name says.", string.Join(' ', gathered.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Equal("1 picture added.", gathered.Lines[^1]);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Gather_PipesDevicesAndDeadLinksWithNamesOfPictures_AreLeftAlone()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare().With("empty.png", "");
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        Picture(phone, "IMG_1.jpg", 1, "2025:10:03 21:14:05");
        using (var made = Process.Start("mkfifo", [Path.Combine(phone.Folder, "pipe.jpg")]))
        {
            made.WaitForExit();
        }

        File.CreateSymbolicLink(Path.Combine(phone.Folder, "to-pipe.jpg"), Path.Combine(phone.Folder, "pipe.jpg"));
        File.CreateSymbolicLink(Path.Combine(phone.Folder, "zero.jpg"), "/dev/zero");
        File.CreateSymbolicLink(Path.Combine(phone.Folder, "dead.jpg"), "nowhere");
        File.CreateSymbolicLink(Path.Combine(phone.Folder, "round.jpg"), "round.jpg");
        Directory.CreateSymbolicLink(Path.Combine(phone.Folder, "a"), ".");
        Directory.CreateSymbolicLink(Path.Combine(phone.Folder, "b"), ".");

        Assert.Equal("1 picture added.", bench.Ask("gather", phone.Folder).Lines[^1]);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Gather_PictureWithANameThatIsNoText_IsToldAndStopsNoOther()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare();
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        Directory.CreateDirectory(Path.Combine(bench.Disk.Folder, "drill/photos/2025-10-03-2114.jpg"));
        Picture(phone, "IMG_1.jpg", 1, "2025:10:03 21:14:05");
        Shell("cp IMG_1.jpg \"$(printf 'bad\\351.jpg')\"");

        var gathered = bench.Ask("gather", phone.Folder);

        Shell("rm bad*");
        Assert.Equal(1, gathered.Status);
        Assert.Equal("1 picture added.", gathered.Lines[^1]);
        Assert.Contains(".jpg: it cannot be read (", gathered.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(bench.Disk.Folder, "drill/photos/2025-10-03-2114-2.jpg")));

        void Shell(string line)
        {
            using var shell = Process.Start(new ProcessStartInfo("sh", ["-c", line]) { WorkingDirectory = phone.Folder })!;
            shell.WaitForExit();
        }
    }

    [Fact]
    public void Gather_EntryThatCannotBeAddedTo_CopiesNothingAndSaysWhatToDo()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare();
        Picture(phone, "a.jpg", 1, "2025:10:03 21:14:05");
        Picture(bench.Disk, "drill/photos/old.jpg", 2, null);
        var single = Entry.Replace("# last", "photos: >-\r\n  photos/old.jpg", StringComparison.Ordinal);
        bench.Disk.With("drill/2025-10-03-head.md", single);

        var gathered = bench.Ask("gather", phone.Folder);

        Assert.Equal(1, gathered.Status);
        Assert.Contains("Write it as a list, `photos: [one, another]`", string.Join(' ', gathered.Lines.Select(line => line.Trim())), StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(Path.Combine(bench.Disk.Folder, "drill/photos")));
    }

    // What a crash between the copy and the entry leaves.
    [Fact]
    public void Gather_PictureCopiedButNotListed_IsListedWithoutASecondCopy()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare();
        bench.Disk.With("drill/2025-10-03-head.md", Entry);
        Picture(phone, "a.jpg", 1, "2025:10:03 21:14:05");
        Directory.CreateDirectory(Path.Combine(bench.Disk.Folder, "drill/photos"));
        File.Copy(Path.Combine(phone.Folder, "a.jpg"), Path.Combine(bench.Disk.Folder, "drill/photos/2025-10-03-2114.jpg"));

        bench.Ask("gather", phone.Folder);

        Assert.Contains("photos:\r\n  - photos/2025-10-03-2114.jpg\r\n---", bench.Text("drill/2025-10-03-head.md"), StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(Path.Combine(bench.Disk.Folder, "drill/photos")));
    }

    [Fact]
    public void Write_Captions_AskForOneLineAPicture()
    {
        using var bench = new AtTheBench();
        using var phone = JournalOnDisk.Bare();
        Picture(phone, "a.jpg", 1, "2025:10:03 20:00:00");
        Picture(phone, "b.jpg", 2, "2025:10:03 21:15:00");

        var written = bench.AskAndAnswer(["", "", "", "The bore: true at last", ""], "write", "--captions", "--photos", phone.Folder);

        Assert.Equal(0, written.Status);
        Assert.Contains("Hours, from first to last picture [1h15]: ", written.Error, StringComparison.Ordinal);
        Assert.Equal(
            "---\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h15\nphotos:\n  - {file: photos/2025-10-03-2000.jpg, caption: \"The bore: true at last\"}\n  - photos/2025-10-03-2115.jpg\n---\n",
            bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Empty(bench.Problems());
    }

    // The count of the first entry of the camera's table (Exif 2.31: a TIFF of its own, with 12 bytes to an entry) says more than there is.
    private static void DamageExif(string path)
    {
        var jpeg = File.ReadAllBytes(path);
        var table = jpeg.AsSpan().IndexOf("Exif\0\0"u8) + 6 + 8 + 2;
        jpeg.AsSpan(table + 4, 4).Fill(0xFF);
        File.WriteAllBytes(path, jpeg);
    }

    private static void Picture(JournalOnDisk disk, string name, byte shade, string? taken, string? offset = null, Action<SixLabors.ImageSharp.Metadata.ImageMetadata>? change = null)
    {
        var path = Path.Combine(disk.Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var picture = new Image<Rgb24>(8, 8, new Rgb24(shade, shade, (byte)(40 * shade)));
        if (taken is not null)
        {
            picture.Metadata.ExifProfile = new ExifProfile();
            picture.Metadata.ExifProfile.SetValue(ExifTag.DateTimeOriginal, taken);
            if (offset is not null)
            {
                picture.Metadata.ExifProfile.SetValue(ExifTag.OffsetTimeOriginal, offset);
            }
        }

        change?.Invoke(picture.Metadata);

        picture.Save(path);
    }
}
