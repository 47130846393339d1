namespace Journal.Bench.Pages;

/// <summary>The page on which a phone is paired.</summary>
/// <param name="Frame">What all pages have.</param>
/// <param name="Code">The digits that the picture in the terminal brought along; empty for none.</param>
/// <param name="Name">What the phone may be called.</param>
/// <param name="Said">What went wrong; null at first.</param>
/// <param name="IsPlain">Whether what is typed can be read by others in the same network.</param>
public sealed record PairPage(Frame Frame, string Code, string Name, string? Said, bool IsPlain);

/// <summary>The page for someone on this machine who did not come by the address in the terminal, and other dead ends.</summary>
/// <param name="Frame">What all pages have.</param>
/// <param name="Said">What to do.</param>
public sealed record WordsPage(Frame Frame, string Said);

/// <summary>The page of devices.</summary>
/// <param name="Frame">What all pages have.</param>
/// <param name="Devices">The devices, the last used first.</param>
public sealed record DevicesPage(Frame Frame, IReadOnlyList<DeviceRow> Devices);

/// <summary>A device.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Kind">A phone, or a browser on this machine.</param>
/// <param name="Since">When it was paired.</param>
/// <param name="LastUsed">When it was last used.</param>
/// <param name="IsThis">Whether it is the one that asks.</param>
public sealed record DeviceRow(string Id, string Name, string Kind, string Since, string LastUsed, bool IsThis);
