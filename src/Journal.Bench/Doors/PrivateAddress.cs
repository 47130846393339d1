using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Journal.Bench.Doors;

/// <summary>Addresses that only this machine, or only the house, can reach.</summary>
public static class PrivateAddress
{
    private static readonly IPNetwork[] Networks =
    [
        IPNetwork.Parse("10.0.0.0/8"), IPNetwork.Parse("172.16.0.0/12"), IPNetwork.Parse("192.168.0.0/16"), // RFC 1918, 3.
        IPNetwork.Parse("169.254.0.0/16"), // RFC 3927, 2.1: of one cable or one radio alone.
        IPNetwork.Parse("fc00::/7"), // RFC 4193, 3.1.
        IPNetwork.Parse("fe80::/10"), // RFC 4291, 2.5.6.
    ];

    /// <summary>Whether an address is one of a house.</summary>
    public static bool IsOfAHouse(IPAddress address)
    {
        var plain = Plain(address);
        return Array.Exists(Networks, network => network.Contains(plain));
    }

    /// <summary>Whether nobody outside of the house can have it: an address of a house, or of this machine.</summary>
    public static bool IsNear(IPAddress? address) => address is not null && (IPAddress.IsLoopback(Plain(address)) || IsOfAHouse(address));

    /// <summary>
    /// The addresses of a house that this machine has now, the likeliest first: those of networks that lead on to others, and of
    /// these the short ones that can be typed.
    /// </summary>
    public static IReadOnlyList<IPAddress> OfThisMachine() =>
    [
        .. from card in NetworkInterface.GetAllNetworkInterfaces()
           where card is { OperationalStatus: OperationalStatus.Up, NetworkInterfaceType: not NetworkInterfaceType.Loopback }
           let properties = card.GetIPProperties()
           from one in properties.UnicastAddresses
           where IsOfAHouse(one.Address) && !one.Address.IsIPv6LinkLocal
           orderby properties.GatewayAddresses.Count == 0, one.Address.AddressFamily != AddressFamily.InterNetwork, one.Address.ToString().StartsWith("169.", StringComparison.Ordinal)
           select one.Address,
    ];

    /// <summary>An address as it stands in the address of a page: that of IPv6 in brackets.</summary>
    public static string Bracketed(IPAddress address) => address.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{address}]" : address.ToString();

    // A socket for both families tells of 192.168.1.7 as of ::ffff:192.168.1.7.
    private static IPAddress Plain(IPAddress address) => address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;
}
