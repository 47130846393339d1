using System.Buffers.Text;
using System.Security.Cryptography;

namespace Journal.Bench.Pairing;

/// <summary>A device that has shown its secret.</summary>
/// <param name="Device">The device.</param>
/// <param name="Token">
/// What each of its forms carries, so that no other site can forge one. It follows from the secret, so a page that was open
/// while the program was started anew can still send.
/// </param>
internal sealed record Session(Device Device, string Token)
{
    /// <summary>The session of a device.</summary>
    public static Session Of(Device device, ReadOnlySpan<byte> secret) => new(device, Base64Url.EncodeToString(HMACSHA256.HashData(secret, "form"u8)));
}
