using System.Text.Json;
using System.Text.Json.Serialization;

namespace Journal.Bench.Pairing;

/// <summary>A browser that may ask: a phone that was paired, or one on this machine.</summary>
/// <param name="Id">Its id, which is no secret.</param>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Sha256">The digest of its secret of 256 bits; the secret itself is only on the device.</param>
/// <param name="Since">When it was paired.</param>
/// <param name="LastUsed">When it last asked, to the day.</param>
/// <param name="IsDesk">Whether it is a browser on this machine.</param>
public sealed record Device(string Id, string Name, string Sha256, DateTimeOffset Since, DateTimeOffset LastUsed, bool IsDesk);

/// <summary>Devices as JSON.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, WriteIndented = true)]
[JsonSerializable(typeof(List<Device>))]
internal sealed partial class DeviceJson : JsonSerializerContext;
