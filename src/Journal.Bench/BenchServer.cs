using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Threading.Channels;
using Journal.Bench.Common;
using Journal.Bench.Doors;
using Journal.Bench.Pairing;
using Journal.Bench.Phones;
using Journal.Bench.Pictures;
using Journal.Bench.Plans;
using Journal.Bench.Requests;
using Journal.Bench.Texts;
using Journal.Bench.Tonight;
using Journal.Bench.WriteUps;
using Journal.Site.Serving;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace Journal.Bench;

/// <summary>
/// The journal in a browser at the machine. A request goes through one gate after the other: where it comes from, under which name,
/// how often, who asks, and for what; each is a line of <c>docs/bench.md</c>.
/// </summary>
public sealed class BenchServer : IAsyncDisposable
{
    private const int MostConnections = 500;
    private const string Worker = "worker.js";

    /// <summary>A head of a request is some hundred bytes: whoever takes longer keeps others waiting.</summary>
    private static readonly TimeSpan ForTheHead = TimeSpan.FromSeconds(5);

    private readonly BenchOrder order;
    private readonly Workshop workshop;
    private readonly IReadOnlyList<Route> routes;
    private readonly Rates strangers;
    private readonly Rates devices;
    private readonly PairingCodes codes;
    private readonly string deskKey = RandomNumberGenerator.GetHexString(32, lowercase: true);
    private OriginGuard guard = new();
    private LocalServer server = null!;

    private BenchServer(BenchOrder order)
    {
        this.order = order;
        workshop = new Workshop(order.Folder, order.Clock);
        (strangers, devices) = (Rates.OfStrangers(order.Clock), Rates.OfDevices(order.Clock));
        codes = new PairingCodes(order.Clock, order.ShowCode);
        routes = [.. new TonightRoutes(workshop).All, .. new TextRoutes(workshop).All, .. new WriteUpRoutes(workshop).All, .. new PictureRoutes(workshop).All, .. new PlanRoutes(workshop).All, .. new PhoneRoutes(workshop, codes).All];
    }

    /// <summary>The address for a browser on this machine; it holds a key that is good while this server runs.</summary>
    public Uri DeskAddress => new(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{server.Port}/?key={deskKey}"));

    /// <summary>The address for phones; null where none can reach it.</summary>
    public Uri? PhoneAddress => order.Phone is null ? null : new Uri($"{PhoneOrigins()[0]}/");

    /// <summary>Answers from now on.</summary>
    /// <exception cref="PortException">The port is taken, or kept by the system.</exception>
    /// <exception cref="BenchException">The journal cannot be read, or the address is not one of a house.</exception>
    public static async Task<BenchServer> Start(BenchOrder order)
    {
        if (order.Phone is { } phone && !PrivateAddress.IsNear(phone))
        {
            throw new BenchException($"{phone} is a public address: anyone could knock there. Phones are served on a private one alone, such as 192.168.1.7.");
        }

        var port = order.Port == 0 ? FreePort() : order.Port;
        var bench = new BenchServer(order with { Port = port });
        try
        {
            _ = bench.workshop.Journal.Journal;
            bench.guard = new OriginGuard([string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}"), string.Create(CultureInfo.InvariantCulture, $"http://localhost:{port}"), .. bench.PhoneOrigins()]);
            Door[] phones = order.Phone is { } address && !IPAddress.IsLoopback(address) ? [new Door(address, port, order.Certificate?.Certificate)] : [];
            var limits = new ServerLimits { LongestBody = Route.LongestForm, MostConnections = MostConnections, ForTheHead = ForTheHead };
            bench.server = await LocalServer.Start([Door.OfThisMachine(port), .. phones], limits, bench.Answer);
            return bench;
        }
        catch
        {
            await bench.workshop.DisposeAsync();
            throw;
        }
    }

    /// <summary>Shows the maker six digits, if none are good at the moment.</summary>
    public void OfferPairing() => codes.Offer();

    /// <summary>Ends when all that was sent is on the disk.</summary>
    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        await workshop.DisposeAsync();
    }

    // The first is the one that is shown: by the certificate's name, which a browser holds against it.
    private string[] PhoneOrigins()
    {
        if (order.Phone is not { } phone)
        {
            return [];
        }

        string[] hosts = [.. order.Certificate?.Names ?? [], PrivateAddress.Bracketed(phone)];
        var scheme = order.Certificate is null ? "http" : "https";
        return [.. hosts.Distinct().Select(host => string.Create(CultureInfo.InvariantCulture, $"{scheme}://{host}:{order.Port}"))];
    }

    private async Task Answer(HttpContext context)
    {
        try
        {
            await Send(context, await Reply(context));
        }
        catch (Exception e) when (e is OperationCanceledException or Microsoft.AspNetCore.Connections.ConnectionResetException)
        {
            // The page went away, or the bench ends: nobody is left to be told.
        }
    }

    private async Task<Reply> Reply(HttpContext context)
    {
        var request = context.Request;
        var origin = request.Headers.Origin;
        if (!PrivateAddress.IsNear(context.Connection.RemoteIpAddress) || !guard.Lets(request.Scheme, request.Headers.Host, origin.Count == 0 ? null : origin.ToString()) || IsForAnotherSite(request))
        {
            return Requests.Reply.Words(403, "The bench answers under its own addresses alone.");
        }

        var session = workshop.Devices.Find(request.Cookies[CookieName(request)]);
        if (session is null ? !strangers.Lets(context.Connection.RemoteIpAddress) : !devices.Lets(session.Device.Id))
        {
            return Requests.Reply.Words(429, "That is more than is answered at once. Wait a moment.");
        }

        return await Reply(new Asked(context, request.Path.Value ?? "/", session));
    }

    // Browsers say whose page asks (Fetch Metadata, 2). Another site may lead to ours by a link, and no more; one on another port of
    // this machine is another site too.
    private static bool IsForAnotherSite(HttpRequest request) =>
        request.Headers["Sec-Fetch-Site"].ToString() is not ("" or "same-origin" or "none") && !(request.Headers["Sec-Fetch-Mode"] == "navigate" && HttpMethods.IsGet(request.Method));

    private async Task<Reply> Reply(Asked asked)
    {
        var method = asked.Context.Request.Method;
        if (method == "GET" && asked.Path == "/")
        {
            return Home(asked);
        }

        if (method == "GET" && asked.Path.StartsWith("/look/", StringComparison.Ordinal))
        {
            return workshop.Look.Find(asked.LastStep) is var (name, bytes) ? new Reply(200, ContentTypes.Of(name), bytes) { IsLasting = true } : Requests.Reply.Nothing;
        }

        if (method == "GET" && asked.Path == $"/{Worker}")
        {
            return new Reply(200, ContentTypes.Of(Worker), workshop.Look.Bytes(Worker)); // At the root, for a worker answers for what is below it.
        }

        var there = routes.Where(route => route.Matches(asked.Path)).ToList();
        var route = there.Find(route => route.Method == method);
        return there.Count == 0 ? Requests.Reply.Nothing
            : route is null ? Requests.Reply.Words(405, "That is not done here.")
            : WhyNot(asked, route) ?? await Reply(asked, route);
    }

    // The address in the terminal makes a browser on this machine one of ours; without it, whoever shares the machine is a stranger.
    private Reply Home(Asked asked)
    {
        if (asked.Query("key") is not { } key)
        {
            return Requests.Reply.See(asked.Session is not null || !asked.IsFromHere ? Addresses.Tonight : Addresses.Pairing);
        }

        if (!asked.IsFromHere || !CryptographicOperations.FixedTimeEquals(System.Text.Encoding.UTF8.GetBytes(key), System.Text.Encoding.UTF8.GetBytes(deskKey)))
        {
            return Requests.Reply.Words(403, "That address is of another time. Open the one that the terminal shows now.");
        }

        return Requests.Reply.See(Addresses.Tonight) with { Cookie = asked.Session is { Device.IsDesk: true } ? null : workshop.Devices.Add("This machine", isDesk: true) };
    }

    private static Reply? WhyNot(Asked asked, Route route) => (route.Who, asked.Session) switch
    {
        (Who.Anyone, _) or (Who.Paired, not null) or (Who.Desk, { Device.IsDesk: true }) => null,
        (_, null) when asked.Context.Request.Method == "GET" => Requests.Reply.See(Addresses.Pairing),
        (_, null) => Requests.Reply.Words(401, "This browser is not paired. Load the page again to pair it."),
        _ => Requests.Reply.Words(403, "That is done at the desk, in a browser on the machine itself."),
    };

    private static async Task<Reply> Reply(Asked asked, Route route)
    {
        if (asked.Context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } body)
        {
            body.MaxRequestBodySize = route.LongestBody;
        }

        try
        {
            return await route.Answer(asked);
        }
        catch (BadFormException e)
        {
            return Requests.Reply.Words(e.Status, e.Message);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Requests.Reply.Words(503, $"Nothing was kept: {e.Message}");
        }
        catch (ChannelClosedException)
        {
            return Requests.Reply.Words(503, "Nothing was kept: the bench is closing.");
        }
    }

    private async Task Send(HttpContext context, Reply reply)
    {
        var (response, headers) = (context.Response, context.Response.Headers);
        response.StatusCode = reply.Status;
        headers.ContentType = reply.Type;
        headers.ContentLength = reply.Body.Length;
        headers.ContentSecurityPolicy = Policy(reply);
        headers.XContentTypeOptions = "nosniff";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(self), microphone=(), geolocation=()";
        headers.CacheControl = reply.IsLasting ? "private, max-age=31536000, immutable" : "no-store";
        if (context.Request.IsHttps)
        {
            headers.StrictTransportSecurity = "max-age=31536000";
        }

        if (reply.Location is { } location)
        {
            headers.Location = location;
        }

        if (reply.Cookie is { } cookie)
        {
            response.Cookies.Append(CookieName(context.Request), cookie, new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                Secure = context.Request.IsHttps,
                Path = "/",
                MaxAge = TimeSpan.FromDays(400), // The longest that browsers keep one.
            });
        }

        if (!HttpMethods.IsHead(context.Request.Method) && reply.Body.Length > 0)
        {
            await response.Body.WriteAsync(reply.Body, context.RequestAborted);
        }
    }

    // A name of its own for each port: browsers keep cookies by the name of the machine alone.
    private string CookieName(HttpRequest request) => string.Create(CultureInfo.InvariantCulture, $"{(request.IsHttps ? "__Host-" : "")}bench-{order.Port}");

    private string Policy(Reply reply) =>
        $"default-src 'none'; style-src 'self' {workshop.Look.StyleSource}; img-src 'self' blob: data:; script-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors {(reply.MayBeFramed ? "'self'" : "'none'")}";

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
