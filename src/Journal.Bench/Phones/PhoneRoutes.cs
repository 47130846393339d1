using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Pairing;
using Journal.Bench.Requests;
using Journal.Site.Pages;

namespace Journal.Bench.Phones;

/// <summary>Pairing a phone, the list of what is paired, and taking back.</summary>
/// <param name="workshop">What all pages work with.</param>
/// <param name="codes">The six digits.</param>
internal sealed class PhoneRoutes(Workshop workshop, PairingCodes codes)
{
    private const int LongestName = 40;

    /// <summary>All that can be asked for.</summary>
    public IEnumerable<Route> All =>
    [
        Route.Get(Addresses.Pairing, asked => Ask(asked, said: null, 200)) with { Who = Who.Anyone },
        Route.Post(Addresses.Pairing, Pair) with { Who = Who.Anyone },
        Route.Get(Addresses.Phones, List) with { Who = Who.Desk },
        Route.Post($"{Addresses.Phones}/take-back", TakeBack) with { Who = Who.Desk },
    ];

    private Reply Ask(Asked asked, string? said, int status)
    {
        if (!codes.Offer())
        {
            (said, status) = ("There were too many codes in the last hour. Wait a while, then load this page again.", 429);
        }

        var digits = asked.Query("code") is { } code && code.Length <= 8 && code.All(char.IsAsciiDigit) ? code : "";
        return Reply.Page(workshop.Look.Fill("pair", new PairPage(workshop.Frame(asked, "Pair this phone", Addresses.Pairing), digits, "Phone", said, !asked.Context.Request.IsHttps)), status);
    }

    private async Task<Reply> Pair(Asked asked)
    {
        var form = await Form.Read(asked.Context.Request);
        switch (codes.Try(form["code"] ?? ""))
        {
            case CodeAnswer.Right:
                var name = string.Concat((form["name"] ?? "Phone").Where(letter => !char.IsControl(letter)).Take(LongestName));
                return workshop.Devices.Add(name, isDesk: false) is { } cookie ? Reply.See("/") with { Cookie = cookie }
                    : Ask(asked, "There are 20 phones already. Take one back on the page Phones of the desk, then try again.", 409);
            case CodeAnswer.Wrong:
                return Ask(asked, "Those are not the digits on the terminal. Try again.", 403);
            case CodeAnswer.Renewed:
                return Ask(asked, "That code is not good any more. The terminal shows a new one.", 403);
            default:
                return Ask(asked, said: null, 429);
        }
    }

    private Reply List(Asked asked) => Reply.Page(workshop.Look.Fill("phones", new DevicesPage(
        workshop.Frame(asked, "Phones", Addresses.Phones),
        [.. workshop.Devices.All.Select(device => new DeviceRow(
            device.Id, device.Name, device.IsDesk ? "A browser on this machine" : "Phone", DayOf(device.Since), DayOf(device.LastUsed), device.Id == asked.Session?.Device.Id))])));

    private async Task<Reply> TakeBack(Asked asked)
    {
        var form = await asked.ReadForm();
        workshop.Devices.Remove(form["device"] ?? "");
        return Reply.See(Addresses.Phones);
    }

    private static string DayOf(DateTimeOffset instant) => Show.PlainDate(DateOnly.FromDateTime(instant.LocalDateTime));
}
