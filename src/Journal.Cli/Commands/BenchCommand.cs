using System.CommandLine;
using System.Net;
using Journal.Bench;
using Journal.Bench.Doors;
using Journal.Bench.Pairing;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Wording;
using Journal.Site.Serving;

namespace Journal.Cli.Commands;

/// <summary><c>journal bench</c>: the journal in a browser, on this machine and on the phones in the house.</summary>
internal static class BenchCommand
{
    private const int UsualPort = 8766;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, port) = (InOption.Create(), PortOption.Create(UsualPort));
        var phone = new Option<string?>("--phone") { Description = "Also for phones in the house, on this machine's private address, or on the one named.", HelpName = "address", Arity = ArgumentArity.ZeroOrOne };
        var certificate = new Option<string?>("--certificate") { Description = "With `--phone`: a PEM file with a certificate and its key, for https.", HelpName = "file" };
        var forget = new Option<bool>("--forget") { Description = "Unpair all phones, and end." };
        var command = new ExampledCommand("bench", "Your journal in a browser at the machine: the switch, remarks, pictures, sizes. Ctrl-C ends it.", "journal bench --phone") { phone, port, certificate, forget, folder };
        command.SetAction((asked, cancellation) =>
        {
            if (JournalPlace.Find(asked.GetValue(folder), terminal.Folder) is not { } found)
            {
                terminal.Complain(JournalPlace.WhyNot(asked.GetValue(folder), terminal.Folder));
                return Task.FromResult(ExitStatus.WrongUse);
            }

            return asked.GetValue(forget) ? Task.FromResult(Forget(found, terminal))
                : Run(new Wanted(found, asked.GetValue(port), asked.GetResult(phone) is not null, asked.GetValue(phone), asked.GetValue(certificate)), terminal, cancellation);
        });
        return command;
    }

    private static int Forget(string folder, Terminal terminal)
    {
        var count = new Devices(folder, TimeProvider.System).RemoveAll();
        terminal.Complain(count == 0 ? "No phone was paired." : $"{Casing.Capital(Count.Of(count, "phone"))} unpaired; each has to be paired again.");
        return ExitStatus.Well;
    }

    private static async Task<int> Run(Wanted wanted, Terminal terminal, CancellationToken cancellation)
    {
        if (terminal.Stopping is { } stopping)
        {
            // To be stopped is how it ends.
            (stopping.Status, stopping.WhatStands) = (ExitStatus.Well, () => "Everything that a page said was kept is on the disk.");
        }

        try
        {
            await using var bench = await Open(wanted, terminal);
            Tell(bench, wanted, terminal);
            await Task.Delay(Timeout.Infinite, cancellation);
            return ExitStatus.Well;
        }
        catch (BenchException e)
        {
            terminal.Complain(e.Message);
            return ExitStatus.WrongUse;
        }
        catch (PortException e)
        {
            terminal.Complain($"Port {wanted.Port} {(e.IsKeptBySystem ? "is reserved by the system" : "is in use")}. Leave out `--port` to use a free one.");
            return ExitStatus.NotFinished;
        }
    }

    private static async Task<BenchServer> Open(Wanted wanted, Terminal terminal)
    {
        var address = AddressFor(wanted, terminal);
        BenchServer? bench = null;
        var order = new BenchOrder(wanted.Folder)
        {
            Port = wanted.Port ?? UsualPort,
            Phone = address,
            Certificate = wanted.Certificate is null ? null : BenchCertificate.Read(Path.GetFullPath(wanted.Certificate, terminal.Folder), TimeProvider.System.GetUtcNow()),
            ShowCode = digits => ShowCode(bench?.PhoneAddress, digits, terminal),
        };
        try
        {
            return bench = await BenchServer.Start(order);
        }
        catch (PortException) when (wanted.Port is null)
        {
            return bench = await BenchServer.Start(order with { Port = 0 });
        }
    }

    private static IPAddress? AddressFor(Wanted wanted, Terminal terminal)
    {
        if (!wanted.Phones)
        {
            return wanted.Certificate is null ? null : throw new BenchException("`--certificate` goes with `--phone`.");
        }

        if (wanted.Address is { } named)
        {
            return IPAddress.TryParse(named, out var address) ? address : throw new BenchException($"`{named}` is not an address. Write it as 192.168.1.7.");
        }

        var all = PrivateAddress.OfThisMachine();
        if (all.Count == 0)
        {
            throw new BenchException("This machine has no private address at the moment. Join the network of the house, or leave out `--phone`.");
        }

        if (all.Count > 1)
        {
            terminal.Complain($"Taken: {all[0]}. This machine also has {Count.List([.. all.Skip(1).Select(other => other.ToString())])}; for one of these say `--phone {all[1]}`.");
        }

        return all[0];
    }

    private static void Tell(BenchServer bench, Wanted wanted, Terminal terminal)
    {
        terminal.Out.WriteLine(bench.DeskAddress);
        terminal.Out.Flush();
        terminal.Complain("Open it in a browser on this machine. Ctrl-C ends it; what was kept is safe before that.");
        if (bench.PhoneAddress is not { } phones)
        {
            return;
        }

        terminal.Complain($"Phones in the house: {phones}");
        if (wanted.Certificate is null)
        {
            terminal.Complain("This is not encrypted: others in the same network can read what is typed. `--certificate` encrypts it.");
        }

        foreach (var device in new Devices(wanted.Folder, TimeProvider.System).All.Where(device => !device.IsDesk))
        {
            terminal.Complain($"Paired: {device.Name}, last used {Written.Date(DateOnly.FromDateTime(device.LastUsed.LocalDateTime))}.");
        }

        bench.OfferPairing();
    }

    private static void ShowCode(Uri? phones, string digits, Terminal terminal)
    {
        if (phones is not null && terminal.IsTerminal)
        {
            foreach (var line in QrPicture.Of(new Uri(phones, $"pair?code={digits}").AbsoluteUri))
            {
                terminal.Error.WriteLine(line);
            }
        }

        terminal.Complain($"To pair a phone: {digits[..3]} {digits[3..]}, within two minutes.");
    }

    /// <summary>What was asked for.</summary>
    private sealed record Wanted(string Folder, int? Port, bool Phones, string? Address, string? Certificate);
}
