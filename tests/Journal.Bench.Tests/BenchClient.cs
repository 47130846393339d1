using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace Journal.Bench.Tests;

/// <summary>A browser without scripts: keeps cookies, follows to the next page, and sends the forms of the page that it is on.</summary>
internal sealed class BenchClient : IDisposable
{
    private readonly CookieContainer cookies = new();
    private readonly HttpClientHandler handler;
    private readonly HttpClient http;

    public BenchClient(Uri address)
    {
        Address = new Uri(address, "/");
        handler = new HttpClientHandler { CookieContainer = cookies, AllowAutoRedirect = false, CheckCertificateRevocationList = true };
        http = new HttpClient(handler) { BaseAddress = Address };
    }

    /// <summary>Where the bench is.</summary>
    public Uri Address { get; }

    /// <summary>The page that it is on.</summary>
    public IHtmlDocument Page { get; private set; } = null!;

    /// <summary>The status of the last answer.</summary>
    public HttpStatusCode Status { get; private set; }

    /// <summary>The last answer.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The cookie that it has; null without one.</summary>
    public Cookie? Cookie => cookies.GetAllCookies().SingleOrDefault();

    /// <summary>The token that the forms of the page carry.</summary>
    public string Token => Page.QuerySelector("input[name=token]")!.GetAttribute("value")!;

    /// <summary>Looks at a page.</summary>
    public async Task<BenchClient> Look(string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        return await Send(request);
    }

    /// <summary>Sends a form of the page by the address that it is sent to, with some fields filled in.</summary>
    public Task<BenchClient> Send(string address, params (string Name, string Value)[] fields)
    {
        var form = Page.QuerySelector($"form[action='{address}']") ?? throw new InvalidOperationException($"The page has no form for {address}.");
        var hidden = form.QuerySelectorAll("input[type=hidden]").OfType<IHtmlInputElement>().Select(field => (Name: field.Name!, field.Value));
        var sent = hidden.Where(field => fields.All(one => one.Name != field.Name)).Concat(fields);
        return Post(address, [.. sent]);
    }

    /// <summary>Sends what no form need have.</summary>
    public async Task<BenchClient> Post(string address, params (string Name, string Value)[] fields)
    {
        using var body = new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = body };
        return await Send(request);
    }

    /// <summary>Sends as the page's script does, and stays on the page; the answer is in <see cref="Text"/>.</summary>
    public async Task PostByScript(string address, params (string Name, string Value)[] fields)
    {
        using var body = new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = body };
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        using var answer = await http.SendAsync(request);
        (Status, Text) = (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }

    /// <summary>Sends a request as it is, and follows to the next page.</summary>
    public async Task<BenchClient> Send(HttpRequestMessage request)
    {
        using var answer = await http.SendAsync(request);
        (Status, Text) = (answer.StatusCode, await answer.Content.ReadAsStringAsync());
        if (answer.Headers.Location is { } next)
        {
            return await Look(next.OriginalString);
        }

        Page = await new HtmlParser().ParseDocumentAsync(Text);
        return this;
    }

    /// <summary>Goes back to a page that it was on.</summary>
    public void Stay(IHtmlDocument page) => Page = page;

    /// <summary>Sends a picture from the page of tonight.</summary>
    public async Task<BenchClient> SendPicture(byte[] bytes, string name, string type)
    {
        using var token = new StringContent(Token);
        using var id = new StringContent(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)));
        using var file = new ByteArrayContent(bytes);
        using var body = new MultipartFormDataContent { { token, "token" }, { id, "id" }, { file, "picture", name } };
        file.Headers.ContentType = new MediaTypeHeaderValue(type);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/tonight/picture") { Content = body };
        return await Send(request);
    }

    public void Dispose()
    {
        http.Dispose();
        handler.Dispose();
    }
}
