using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using Journal.Cli.Tests;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Output;

/// <summary>The same journal gives the same bytes, wherever, whenever and in whatever language.</summary>
public sealed class ReproducibleTests
{
    private const string Tongues = "other tongues.json";

    private static readonly (string Locale, string Zone, string Today, string Processors)[] Surroundings =
    [
        ("tr_TR.UTF-8", "Pacific/Kiritimati", "2027-02-28", "1"),
        ("de_DE.UTF-8", "America/St_Johns", "2031-12-31", "4"),
        ("fa_IR.UTF-8", "Asia/Tehran", "2028-02-29", "2"),
        ("ar_SA.UTF-8", "Asia/Riyadh", "2026-12-02", "3"),
    ];

    // The program itself speaks no language; with these settings the library beneath it does.
    [Fact]
    public async Task Program_InOtherSurroundings_GivesTheSameBytes()
    {
        using var journal = Journals.DemoWithPlainPictures();
        using var elsewhere = JournalOnDisk.Bare();
        var tongues = elsewhere.PathOf(Tongues);
        var settings = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "journal.runtimeconfig.json")))!;
        settings["runtimeOptions"]!["configProperties"]!["System.Globalization.Invariant"] = false;
        settings["runtimeOptions"]!["configProperties"]!["System.Globalization.PredefinedCulturesOnly"] = false;
        await File.WriteAllTextAsync(tongues, settings.ToJsonString());
        var wanted = await Publish(journal, elsewhere.PathOf("first"), null, "C", "UTC", "2026-12-01", "2");
        Assert.True(wanted.Count > 100);

        foreach (var (locale, zone, today, processors) in Surroundings)
        {
            var folder = elsewhere.PathOf($"ein Ördner {locale}");
            using var other = JournalOnDisk.Bare();
            CopyBackwards(journal.Folder, other.PathOf("deeper/Journal İ"));

            var found = await Publish(other.PathOf("deeper/Journal İ"), folder, tongues, locale, zone, today, processors);

            Assert.Equal(wanted, found);
        }
    }

    [Fact]
    public void Publish_UnderAnotherCulture_GivesTheSameBytes()
    {
        using var journal = Journals.DemoWithPlainPictures();
        using var elsewhere = JournalOnDisk.Bare();
        SiteOutcome Publish(string to, DateOnly today) => SitePublisher.Publish(new PublishOrder(journal.Folder, elsewhere.PathOf(to), today) { Cache = elsewhere.PathOf($"cache-of-{to}") });
        Publish("plain", Journals.Today);

        Under(OddCulture(), () => Publish("odd", Journals.Today.AddDays(400)));

        Assert.Equal(new SiteOnDisk(elsewhere.PathOf("plain")).Hashes, new SiteOnDisk(elsewhere.PathOf("odd")).Hashes);
    }

    [Fact]
    public void PublishAgain_UnderAnotherCultureAndOnAnotherDay_GivesWhatACleanPublishGives()
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare();
        SiteOutcome Publish(string to, DateOnly today) => SitePublisher.Publish(new PublishOrder(journal.Folder, elsewhere.PathOf(to), today) { Cache = elsewhere.PathOf("cache") });
        var entries = Directory.EnumerateFiles(journal.Folder, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Where(path => !File.ReadAllText(path).Contains("publish:", StringComparison.Ordinal)).ToList();
        Settle(journal, 1);
        Publish("site", Journals.Today);

        File.AppendAllText(entries[0], "\nThe İron cost 1,5 times as much, I think.\n");
        Settle(journal, 2);
        var odd = Under(OddCulture(), () => Publish("site", Journals.Today.AddDays(1)));
        File.AppendAllText(entries[0], "\n1.5 again.\n");
        Settle(journal, 3);
        var plain = Publish("site", Journals.Today.AddDays(2));
        var idle = Under(OddCulture(), () => Publish("site", Journals.Today.AddDays(3)));
        Publish("clean", Journals.Today.AddDays(40));

        Assert.Equal((true, true, false), (odd.WasRead, plain.WasRead, idle.WasRead));
        Assert.NotEqual(0, odd.Published!.Changed);
        Assert.Equal(new SiteOnDisk(elsewhere.PathOf("clean")).Hashes, new SiteOnDisk(elsewhere.PathOf("site")).Hashes);
    }

    // What the test before this one leans on: such a culture does change what is written without care, on every thread.
    [Fact]
    public void OddCulture_OnEveryThread_WritesNumbersAndDatesItsOwnWay() => Under(OddCulture(), () =>
    {
        Parallel.For(0, 8, _ => Assert.Equal(("\u22121٫5", "31.12.26"), ((-1.5).ToString("0.0", CultureInfo.CurrentCulture), new DateOnly(2026, 12, 31).ToString(CultureInfo.CurrentCulture))));
        return 0;
    });

    // The program knows no culture but the invariant one; this is made by hand after what is published of fa-IR, tr-TR and de-DE.
    private static CultureInfo OddCulture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat = new NumberFormatInfo
        {
            NumberDecimalSeparator = "٫", NumberGroupSeparator = "٬", PercentDecimalSeparator = "٫", CurrencyDecimalSeparator = "٫", NegativeSign = "\u2212", PositiveSign = "\u200E+",
            PercentPositivePattern = 2, NumberNegativePattern = 3, NumberGroupSizes = [3, 2], NumberDecimalDigits = 3, NaNSymbol = "ناعدد", PercentSymbol = "٪",
        };
        culture.DateTimeFormat = new DateTimeFormatInfo
        {
            ShortDatePattern = "dd/MM/yy", DateSeparator = ".", TimeSeparator = ".", FirstDayOfWeek = DayOfWeek.Saturday, CalendarWeekRule = CalendarWeekRule.FirstFullWeek,
            MonthNames = ["Ocak", "Şubat", "Mart", "Nisan", "Mayıs", "Haziran", "Temmuz", "Ağustos", "Eylül", "Ekim", "Kasım", "Aralık", ""],
            AbbreviatedMonthNames = ["Oca", "Şub", "Mar", "Nis", "May", "Haz", "Tem", "Ağu", "Eyl", "Eki", "Kas", "Ara", ""],
            DayNames = ["Pazar", "Pazartesi", "Salı", "Çarşamba", "Perşembe", "Cuma", "Cumartesi"],
            AMDesignator = "ÖÖ", PMDesignator = "ÖS",
        };
        return culture;
    }

    private static T Under<T>(CultureInfo culture, Func<T> act)
    {
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, culture);
            return act();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    // Folders list their files in the order in which they came; time stamps lie about the day.
    private static void CopyBackwards(string from, string to)
    {
        foreach (var (i, path) in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).OrderDescending(StringComparer.Ordinal).Index())
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, path));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(path, copy);
            File.SetLastWriteTimeUtc(copy, new DateTime(1980 + (i % 60), 1, 1, 0, 0, 0, DateTimeKind.Utc));
        }
    }

    private static void Settle(JournalOnDisk journal, int minute)
    {
        var time = new DateTime(2026, 1, 1, 0, minute, 0, DateTimeKind.Utc);
        foreach (var path in Directory.EnumerateFiles(journal.Folder, "*", SearchOption.AllDirectories).Where(path => File.GetLastWriteTimeUtc(path) > time))
        {
            File.SetLastWriteTimeUtc(path, time);
        }
    }

    private static Task<IReadOnlyDictionary<string, string>> Publish(JournalOnDisk journal, string to, string? settings, string locale, string zone, string today, string processors) =>
        Publish(journal.Folder, to, settings, locale, zone, today, processors);

    private static async Task<IReadOnlyDictionary<string, string>> Publish(string journal, string to, string? settings, string locale, string zone, string today, string processors)
    {
        string[] words = [.. settings is null ? Array.Empty<string>() : ["exec", "--runtimeconfig", settings], Path.Combine(AppContext.BaseDirectory, "journal.dll"), "publish", "--in", journal, "--to", to, "--today", today];
        var start = new ProcessStartInfo("dotnet", words)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetDirectoryName(to)!,
            Environment = { ["LANG"] = locale, ["LC_ALL"] = locale, ["TZ"] = zone, ["DOTNET_PROCESSOR_COUNT"] = processors, ["JOURNAL_CACHE"] = $"{to} cache" },
        };
        using var program = Process.Start(start)!;
        var (output, error) = (program.StandardOutput.ReadToEndAsync(), program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        Assert.True(program.ExitCode == 0, await output + await error);
        return new SiteOnDisk(to).Hashes;
    }
}
