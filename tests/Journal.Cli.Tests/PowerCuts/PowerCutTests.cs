using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Journal.Tests.Shared;

namespace Journal.Cli.Tests.PowerCuts;

// What a command says is kept is on the disk, and at whatever moment the power is cut, each file that a journal is read
// from is as it was before or as it is after. The system's calls are recorded with strace and played on a model of a disk.
public class PowerCutTests
{
    private const string Slate = ".bench/slate.json";
    private const string Old = "date,part,operation,hours,note\n2025-08-01,head,boring,2h,\"First\"\n2025-08-02,head,turning,1h30,\"Second\"\n";

    public static TheoryData<string> Commands =>
    [
        "jot It_sings",
        "stint begin --part head --operation boring",
        "write --part head --operation boring --hours 1h --title Bored",
        "write --part quill --operation turning --hours 1h --mistake Too_deep",
        "write --from evening.txt --yes",
        "add part cap --title Cap",
        "add tool plug --kind fixture",
        "add build fan",
        "begin bench-shaper",
        "take-in old.csv --build drill",
    ];

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Command_PowerCutAtAnyMoment_LeavesFilesWholeAndKeepsWhatWasTold(string command)
    {
        if (!OperatingSystem.IsLinux() || BuiltProgram.Words[0] != "dotnet")
        {
            return;
        }

        using var journal = JournalOnDisk.Small().With("old.csv", Old).With("evening.txt", "Bored the head for an hour.\n");
        Assert.Equal(0, journal.Ask("stint", "show").Status);
        await Run(journal, command);
    }

    [Fact]
    public async Task StintEnd_PowerCutAtAnyMoment_LeavesFilesWholeAndKeepsWhatWasTold()
    {
        if (!OperatingSystem.IsLinux() || BuiltProgram.Words[0] != "dotnet")
        {
            return;
        }

        using var journal = JournalOnDisk.Small();
        Assert.Equal(0, Answer.To(journal.Folder, terminal => terminal with { Now = DateTimeOffset.UtcNow.AddHours(-2) }, "stint", "begin", "--part", "head", "--operation", "boring").Status);
        await Run(journal, "stint end --now");
    }

    private static async Task Run(JournalOnDisk journal, string command)
    {
        var disk = new RecordedDisk(journal.Folder);
        var before = disk.After(RecordedDisk.Loss.Nothing);
        var log = Path.GetTempFileName();
        try
        {
            var (status, said) = await Record(journal.Folder, log, command.Split(' '));
            Assert.True(status == 0, said);
            var now = new RecordedDisk(journal.Folder).After(RecordedDisk.Loss.Nothing);

            var calls = SystemCalls.Replay(log, disk, call =>
            {
                foreach (var loss in Enum.GetValues<RecordedDisk.Loss>())
                {
                    foreach (var (file, bytes) in disk.After(loss).Where(one => IsRead(one.Key)))
                    {
                        Assert.True(
                            IsSame(bytes, before, file) || IsSame(bytes, now, file) || (file == Slate && IsJson(bytes)),
                            $"{file} would hold {bytes.Length} bytes, neither what it held nor what it holds now, after a power cut that loses {loss} after {call}");
                    }
                }
            });

            Tries.Add("power", calls);
            Assert.InRange(calls, 4, 10_000);
            Assert.Equal(Shown(now), Shown(disk.After(RecordedDisk.Loss.Nothing)));
            Assert.Equal(Shown(now), Shown(disk.After(RecordedDisk.Loss.Everything)));
        }
        finally
        {
            File.Delete(log);
        }
    }

    // Between before and after, the slate says what is being handed over, so that the next command can settle it.
    private static bool IsJson(byte[] bytes)
    {
        try
        {
            return JsonSerializer.Deserialize<JsonElement>(bytes).ValueKind == JsonValueKind.Object;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    // Files that begin with a dot are not read, but for the slate.
    private static bool IsRead(string file) => file == Slate || !$"/{file}".Contains("/.", StringComparison.Ordinal);

    private static bool IsSame(byte[] bytes, SortedDictionary<string, byte[]> files, string file) => files.TryGetValue(file, out var others) && bytes.AsSpan().SequenceEqual(others);

    private static IEnumerable<string> Shown(SortedDictionary<string, byte[]> files) =>
        files.Where(one => IsRead(one.Key)).Select(one => $"{one.Key}: {Encoding.UTF8.GetString(one.Value)}");

    private static async Task<(int Status, string Said)> Record(string folder, string log, string[] words)
    {
        string[] strace = ["-f", "--seccomp-bpf", "-y", "-xx", "-s", "1000000", "-e", $"trace={SystemCalls.Asked}", "-o", log];
        var start = new ProcessStartInfo("strace", [.. strace, .. BuiltProgram.Words, .. words])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var program = Process.Start(start)!;
        program.StandardInput.Close();
        var (output, error) = (program.StandardOutput.ReadToEndAsync(), program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        return (program.ExitCode, await output + await error);
    }
}
