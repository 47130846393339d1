using System.Globalization;
using System.Net;
using Journal.Cli.Tests;
using Journal.Core.Checking;
using Journal.Core.Writing.Bench;

namespace Journal.Bench.Tests;

/// <summary>A clock that a test turns.</summary>
internal sealed class TurnedClock : TimeProvider
{
    private long now;

    /// <summary>A clock that shows an instant in Universal Time, such as <c>2025-10-03 19:10</c>.</summary>
    public TurnedClock(string utc) => At(utc);

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public void At(string utc) => now = DateTimeOffset.Parse(utc + "Z", CultureInfo.InvariantCulture).UtcTicks;

    public void Pass(TimeSpan time) => Interlocked.Add(ref now, time.Ticks);

    public override DateTimeOffset GetUtcNow() => new(Interlocked.Read(ref now), TimeSpan.Zero);

    public override long GetTimestamp() => Interlocked.Read(ref now);
}

/// <summary>The bench of a small journal on disk, served to this test alone.</summary>
internal sealed class ServedBench : IAsyncDisposable
{
    private BenchServer server = null!;

    /// <summary>The journal.</summary>
    public JournalOnDisk Disk { get; } = JournalOnDisk.Small().With("journal.yaml", "title: The Lean-to\ntime-zone: Etc/UTC\n");

    /// <summary>The clock.</summary>
    public TurnedClock Clock { get; } = new("2025-10-03 19:10");

    /// <summary>The codes that were shown.</summary>
    public List<string> Codes { get; } = [];

    /// <summary>The address for a browser on this machine.</summary>
    public Uri Address => server.DeskAddress;

    /// <summary>What is on the slate.</summary>
    public Slate Slate => SlateFile.Peek(Disk.Folder);

    /// <summary>The problems of the journal.</summary>
    public IEnumerable<string> Problems => JournalReader.Read(Disk.Folder, DateOnly.MaxValue).Problems.Where(problem => problem.Kind.Code != "picture-without-words").Select(problem => $"{problem.Place}: {problem.Message}");

    /// <summary>Serves it.</summary>
    public static async Task<ServedBench> Start()
    {
        var bench = new ServedBench();
        await bench.Restart();
        return bench;
    }

    /// <summary>Ends the server, if one runs, and starts another at the same place.</summary>
    public async Task Restart()
    {
        var port = 0;
        if (server is not null)
        {
            port = server.DeskAddress.Port;
            await server.DisposeAsync();
        }

        server = await BenchServer.Start(new BenchOrder(Disk.Folder) { Port = port, Phone = IPAddress.Loopback, Clock = Clock, ShowCode = Codes.Add });
    }

#pragma warning disable CA2000 // Whoever asks for a browser disposes of it.
    /// <summary>A browser on this machine, on the page of tonight.</summary>
    public Task<BenchClient> Desk() => new BenchClient(Address).Look(Address.PathAndQuery);

    /// <summary>A browser that nobody knows.</summary>
    public BenchClient Stranger() => new(Address);

    /// <summary>A paired phone, on the page of tonight.</summary>
    public async Task<BenchClient> Phone(string name = "Phone")
    {
        var phone = await Stranger().Look("/pair");
        return await phone.Send("/pair", ("code", Codes[^1]), ("name", name));
    }
#pragma warning restore CA2000

    /// <summary>What the program answers in the journal's folder, at the time of the clock.</summary>
    public Answer Ask(params string[] words) => Answer.To(Disk.Folder, terminal => terminal with { Now = Clock.GetUtcNow() }, words);

    /// <summary>The text of a file of the journal.</summary>
    public string Text(string file) => File.ReadAllText(Path.Combine(Disk.Folder, file));

    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        Disk.Dispose();
    }
}
