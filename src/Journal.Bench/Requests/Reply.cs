using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Journal.Bench.Requests;

/// <summary>What is answered.</summary>
/// <param name="Status">The status of RFC 9110, 15.</param>
/// <param name="Type">The type of the body.</param>
/// <param name="Body">The body.</param>
internal sealed record Reply(int Status, string Type, ReadOnlyMemory<byte> Body)
{
    private const string Plain = "text/plain; charset=utf-8";

    /// <summary>Where to look instead; null where the body is the answer.</summary>
    public string? Location { get; init; }

    /// <summary>A cookie that the browser is to keep: its value, or empty to forget it.</summary>
    public string? Cookie { get; init; }

    /// <summary>Whether the address names these very bytes, so that they can be kept.</summary>
    public bool IsLasting { get; init; }

    /// <summary>Whether a page of ours may frame it, as the preview beside a text does.</summary>
    public bool MayBeFramed { get; init; }

    /// <summary>A page.</summary>
    public static Reply Page(string html, int status = 200) => new(status, "text/html; charset=utf-8", Encoding.UTF8.GetBytes(html));

    /// <summary>A sentence.</summary>
    public static Reply Words(int status, string words) => new(status, Plain, Encoding.UTF8.GetBytes(words));

    /// <summary>A value for a script.</summary>
    public static Reply Json<T>(T value, JsonTypeInfo<T> form, int status = 200) => new(status, "application/json", JsonSerializer.SerializeToUtf8Bytes(value, form));

    /// <summary>Another page, asked for anew: what was sent is not sent twice when the page is loaded again.</summary>
    public static Reply See(string address) => new(303, Plain, default) { Location = address };

    /// <summary>There is nothing at that address, or nothing for whoever asks.</summary>
    public static Reply Nothing { get; } = Words(404, "There is nothing here.");
}
