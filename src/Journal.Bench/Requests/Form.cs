using System.Security.Cryptography;
using System.Text;
using Journal.Bench.Pairing;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace Journal.Bench.Requests;

/// <summary>A form that cannot be taken.</summary>
public sealed class BadFormException : Exception
{
    /// <summary>A form that cannot be taken.</summary>
    public BadFormException(int status, string message)
        : base(message) => Status = status;

    /// <inheritdoc/>
    public BadFormException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public BadFormException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <inheritdoc/>
    public BadFormException()
    {
    }

    /// <summary>The status to answer with.</summary>
    public int Status { get; } = 400;
}

/// <summary>A form as it was sent: its fields, trimmed, and its files. What was left empty was not said.</summary>
/// <param name="fields">The form.</param>
internal sealed class Form(IFormCollection fields)
{
    /// <summary>What each form of ours has, or fewer.</summary>
    public const int MostFields = 64;

    /// <summary>The longest text in a field, in characters: many pages.</summary>
    public const int LongestField = 100_000;

    private const int LongestName = 64;
    private const string TokenField = "token";

    /// <summary>The pictures, in the order they were chosen.</summary>
    public IReadOnlyList<IFormFile> Files => [.. fields.Files.Where(file => file.Length > 0)];

    /// <summary>What was said in a field; null for nothing.</summary>
    public string? this[string name] => fields.TryGetValue(name, out var values) && values.FirstOrDefault()?.Trim() is { Length: > 0 } said ? said : null;

    /// <summary>The text of a field as it was typed, nothing trimmed; line ends as the browser sends them.</summary>
    public string Raw(string name) => fields.TryGetValue(name, out var values) ? values.FirstOrDefault() ?? "" : "";

    /// <summary>Whether there is a field of a name, empty or not.</summary>
    public bool Has(string name) => fields.ContainsKey(name);

    /// <summary>Everything that was said in the fields of a name.</summary>
    public IReadOnlyList<string> All(string name) => fields.TryGetValue(name, out var values) ? [.. values.OfType<string>()] : [];

    /// <summary>Reads the form of a request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="longestField">The longest text in a field, in characters.</param>
    /// <param name="mostFields">How many fields there may be.</param>
    /// <exception cref="BadFormException">It is none, or too long.</exception>
    public static async Task<Form> Read(HttpRequest request, int longestField = LongestField, int mostFields = MostFields)
    {
        if (!request.HasFormContentType)
        {
            throw new BadFormException(415, "Only forms are taken here.");
        }

        var limits = new FormOptions
        {
            ValueCountLimit = mostFields,
            KeyLengthLimit = LongestName,
            ValueLengthLimit = longestField,
            MultipartHeadersCountLimit = 8,
            MultipartHeadersLengthLimit = 2048,
            MultipartBoundaryLengthLimit = 128,
            MultipartBodyLengthLimit = request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize ?? Route.LongestForm,
        };
        try
        {
            return new Form(await request.ReadFormAsync(limits, request.HttpContext.RequestAborted));
        }
        catch (BadHttpRequestException e)
        {
            throw new BadFormException(e.StatusCode, e.StatusCode == 413 ? "That is more than is taken at once." : "The form cannot be read.");
        }
        catch (Exception e) when (e is InvalidDataException or IOException or DecoderFallbackException)
        {
            throw new BadFormException("The form cannot be read.", e);
        }
    }

    /// <summary>Whether it carries the token of a session.</summary>
    public bool Carries(Session session) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(this[TokenField] ?? ""), Encoding.UTF8.GetBytes(session.Token));
}
