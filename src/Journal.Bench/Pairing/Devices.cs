using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text.Json;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;

namespace Journal.Bench.Pairing;

/// <summary>
/// The devices that may ask: <c>.bench/devices.json</c> in the journal's folder, which only its owner can read. It holds no
/// secret. Another command may change it meanwhile, so it is looked at each time.
/// </summary>
/// <param name="journal">The journal's folder.</param>
/// <param name="clock">The clock.</param>
public sealed class Devices(string journal, TimeProvider clock)
{
    /// <summary>The most phones that can be paired at once.</summary>
    public const int MostPhones = 20;

    private const int MostBrowsersHere = 5;
    private const int SecretBytes = 32;

    /// <summary>Nobody's phone is away from the bench for that long.</summary>
    private static readonly TimeSpan Forgotten = TimeSpan.FromDays(180);

    private readonly Lock guard = new();
    private (DateTime Written, long Length, List<Device> All) seen;

    private string File => Path.Combine(journal, SlateFile.Folder, "devices.json");

    /// <summary>All devices, the last used first.</summary>
    public IReadOnlyList<Device> All
    {
        get
        {
            lock (guard)
            {
                return [.. Current().OrderByDescending(device => device.LastUsed).ThenBy(device => device.Name, StringComparer.Ordinal)];
            }
        }
    }

    /// <summary>Takes a device in; null where there are too many phones.</summary>
    /// <param name="name">What the maker calls it.</param>
    /// <param name="isDesk">Whether it is a browser on this machine; the oldest of these makes room.</param>
    /// <returns>What its cookie holds: its id and its secret.</returns>
    public string? Add(string name, bool isDesk)
    {
        var secret = RandomNumberGenerator.GetBytes(SecretBytes);
        var now = clock.GetUtcNow();
        var device = new Device(RandomNumberGenerator.GetHexString(16, lowercase: true), name, Digest(secret), now, now, isDesk);
        var isTaken = false;
        Change(all =>
        {
            var others = all.Where(one => one.IsDesk == isDesk).OrderByDescending(one => one.LastUsed).ToList();
            isTaken = isDesk || others.Count < MostPhones;
            return !isTaken ? all : [.. all.Except(isDesk ? others.Skip(MostBrowsersHere - 1) : []), device];
        });
        return isTaken ? $"{device.Id}.{Base64Url.EncodeToString(secret)}" : null;
    }

    /// <summary>Takes a device back; false where there is none of that id.</summary>
    public bool Remove(string id) => Change(all => [.. all.Where(device => device.Id != id)]);

    /// <summary>Takes all back.</summary>
    /// <returns>How many phones there were.</returns>
    public int RemoveAll()
    {
        var phones = All.Count(device => !device.IsDesk);
        Change(_ => []);
        return phones;
    }

    /// <summary>The session of whoever shows a cookie; null where it is none of ours.</summary>
    internal Session? Find(string? cookie)
    {
        if (cookie?.Split('.') is not [var id, var written] || !TryDecode(written, out var secret))
        {
            return null;
        }

        Device? device;
        lock (guard)
        {
            device = Current().Find(one => one.Id == id);
        }

        // Compared in a time that tells nothing of how much of it was right.
        if (device is null || !CryptographicOperations.FixedTimeEquals(Convert.FromHexString(device.Sha256), SHA256.HashData(secret)))
        {
            return null;
        }

        NoteUse(device);
        return Session.Of(device, secret);
    }

    // Once a day is enough to know which phones are in use; a write for each request would wear the disk.
    private void NoteUse(Device device)
    {
        var now = clock.GetUtcNow();
        if (now - device.LastUsed > TimeSpan.FromDays(1))
        {
            Change(all => [.. all.Where(one => one.Id == device.Id || now - one.LastUsed < Forgotten).Select(one => one.Id == device.Id ? one with { LastUsed = now } : one)]);
        }
    }

    // False where nothing changed.
    private bool Change(Func<List<Device>, List<Device>> change)
    {
        using var slate = SlateFile.Take(journal);
        lock (guard)
        {
            var before = Current();
            var after = change(before);
            if (after.SequenceEqual(before))
            {
                return false;
            }

            MakePrivate();
            SafeFile.Replace(File, JsonSerializer.SerializeToUtf8Bytes(after, DeviceJson.Default.ListDevice));
            seen = default;
            return true;
        }
    }

    // A file that is written anew keeps its mode; so it begins with the right one.
    private void MakePrivate()
    {
        if (System.IO.File.Exists(File) || OperatingSystem.IsWindows())
        {
            return;
        }

        using var made = new FileStream(File, new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite });
        made.Write("[]"u8);
    }

    private List<Device> Current()
    {
        var file = new FileInfo(File);
        if (!file.Exists)
        {
            return [];
        }

        if (seen.All is null || (seen.Written, seen.Length) != (file.LastWriteTimeUtc, file.Length))
        {
            seen = (file.LastWriteTimeUtc, file.Length, Read());
        }

        return seen.All;
    }

    // What cannot be read pairs nobody: the maker pairs anew.
    private List<Device> Read()
    {
        try
        {
            return [.. (JsonSerializer.Deserialize(System.IO.File.ReadAllBytes(File), DeviceJson.Default.ListDevice) ?? []).Where(device => device is { Id: not null, Name: not null, Sha256.Length: 64 } && device.Sha256.All(char.IsAsciiHexDigit))];
        }
        catch (Exception e) when (e is JsonException or FileNotFoundException)
        {
            return [];
        }
    }

    private static string Digest(ReadOnlySpan<byte> secret) => Convert.ToHexStringLower(SHA256.HashData(secret));

    private static bool TryDecode(string written, out byte[] secret)
    {
        secret = [];
        if (written.Length is 0 or > 64 || !Base64Url.IsValid(written))
        {
            return false;
        }

        secret = Base64Url.DecodeFromChars(written);
        return secret.Length == SecretBytes;
    }
}
