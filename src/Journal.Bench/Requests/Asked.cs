using System.Net;
using Journal.Bench.Pairing;
using Microsoft.AspNetCore.Http;

namespace Journal.Bench.Requests;

/// <summary>A request from someone who may ask.</summary>
/// <param name="Context">The request itself.</param>
/// <param name="Path">Its path.</param>
/// <param name="Session">Who asks; null for someone who is not paired.</param>
internal sealed record Asked(HttpContext Context, string Path, Session? Session)
{
    /// <summary>The last step of the path, such as an id.</summary>
    public string LastStep => Path[(Path.LastIndexOf('/') + 1)..];

    /// <summary>Whether it comes from this machine.</summary>
    public bool IsFromHere => Context.Connection.RemoteIpAddress is { } address && IPAddress.IsLoopback(address);

    /// <summary>Whether a script asks, which wants to know what came of it and no page.</summary>
    public bool IsByScript => Context.Request.Headers.Accept.ToString().StartsWith("application/json", StringComparison.Ordinal);

    /// <summary>A value behind the question mark; null for none.</summary>
    public string? Query(string name) => Context.Request.Query[name] is [{ Length: > 0 } value] ? value : null;

    /// <summary>The form that was sent.</summary>
    /// <param name="longestField">The longest text in a field, in characters.</param>
    /// <param name="mostFields">How many fields there may be.</param>
    /// <exception cref="BadFormException">It is none, is too long, or does not carry the token of the session.</exception>
    public async Task<Form> ReadForm(int longestField = Form.LongestField, int mostFields = Form.MostFields)
    {
        var form = await Form.Read(Context.Request, longestField, mostFields);
        return Session is null || form.Carries(Session) ? form
            : throw new BadFormException(403, "This page is from another time. Load it again, then send once more.");
    }
}
