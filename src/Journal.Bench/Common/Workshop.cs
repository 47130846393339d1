using System.Security.Cryptography;
using Journal.Bench.Pages;
using Journal.Bench.Pairing;
using Journal.Bench.Requests;
using Journal.Bench.Slates;
using Journal.Bench.Templates;
using Journal.Core.Writing.Bench;
using Journal.Site.Preview;

namespace Journal.Bench.Common;

/// <summary>What all pages of the bench work with.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="clock">The clock.</param>
internal sealed class Workshop(string folder, TimeProvider clock) : IAsyncDisposable
{
    private static readonly (string Address, string Title, bool IsForTheDesk)[] Ways =
    [
        (Addresses.Tonight, "Tonight", false),
        (Addresses.WriteUp, "Write up", false),
        (Addresses.Pictures, "Pictures", false),
        (Addresses.Plans, "Plan", false),
        (Addresses.Files, "Files", false),
        (Addresses.Phones, "Phones", true),
    ];

    /// <summary>The clock.</summary>
    public TimeProvider Clock => clock;

    /// <summary>The journal's folder.</summary>
    public string Folder => folder;

    /// <summary>The evening by the clock over the bench.</summary>
    public DateOnly Today => BenchClock.Of(Journal.Journal).Evening(clock.GetUtcNow());

    /// <summary>The site with a file in it that is being typed.</summary>
    public DraftPreview Preview { get; } = new(folder);

    /// <summary>The journal.</summary>
    public JournalNow Journal { get; } = new(folder, clock);

    /// <summary>The slate.</summary>
    public SlateNow Slate { get; } = new(folder);

    /// <summary>Who may ask.</summary>
    public Devices Devices { get; } = new(folder, clock);

    /// <summary>The look of the pages.</summary>
    public BenchLook Look { get; } = new();

    /// <summary>Does what is sent.</summary>
    public SlateWriter Writer => field ??= new SlateWriter(Journal, clock);

    /// <summary>What stands in the way of a page that is right: errors in the journal; null for nothing.</summary>
    public string? Trouble => Journal.Read() is { Journal: null } ? "journal.yaml cannot be read at the moment, so this shows the journal as it was. Remarks are kept all the same. See `journal check`." : null;

    /// <summary>How things stand now.</summary>
    /// <exception cref="IOException">The slate cannot be read.</exception>
    public BenchNow Now() => new(Journal.Journal, Slate.Slate, clock.GetUtcNow());

    /// <summary>What all pages have.</summary>
    /// <param name="asked">Who asks.</param>
    /// <param name="title">The page's title.</param>
    /// <param name="here">The page's address, if the ways name it.</param>
    public Frame Frame(Asked asked, string title, string here) => new()
    {
        Title = title,
        Journal = Journal.Journal.Title,
        Style = Look.Style,
        Ways = asked.Session is not { } session ? [] : [.. Ways.Where(way => session.Device.IsDesk || !way.IsForTheDesk).Select(way => new Way(way.Address, way.Title, way.Address == here))],
        Token = asked.Session?.Token ?? "",
        Stamp = RandomNumberGenerator.GetHexString(24, lowercase: true),
    };

    /// <summary>Ends when all that was sent is written.</summary>
    public ValueTask DisposeAsync() => Writer.DisposeAsync();
}
