using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Journal.Site.Tests.Sending;

/// <summary>A real OpenSSH server on loopback, with a host key and a maker's key of its own, stopped when done with.</summary>
internal sealed class SshServer : IDisposable
{
    private readonly Process server;

    public SshServer(string root)
    {
        Root = Directory.CreateDirectory(Path.Combine(root, "ssh")).FullName;
        Port = FreePort();
        MakeKey("host");
        MakeKey("maker");
        MakeKey("stranger");
        File.Copy(Path.Combine(Root, "maker.pub"), Path.Combine(Root, "authorized"));
        if (Environment.UserName == "root")
        {
            Directory.CreateDirectory("/run/sshd");
        }

        File.WriteAllText(Path.Combine(Root, "config"), string.Create(CultureInfo.InvariantCulture, $"""
            Port {Port}
            ListenAddress 127.0.0.1
            HostKey {Root}/host
            AuthorizedKeysFile {Root}/authorized
            PidFile none
            StrictModes no
            UsePAM no
            PasswordAuthentication no
            PermitRootLogin yes
            Subsystem sftp internal-sftp
            """));
        server = Start();
    }

    public string Root { get; }

    public int Port { get; }

    public string Fingerprint => Run("ssh-keygen", "-l", "-f", Path.Combine(Root, "host.pub")).Split(' ')[1];

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>A file of known hosts with the server's key, or another's, its names hashed or plain.</summary>
    public string KnownHosts(int port, string key = "host", bool isHashed = false)
    {
        var path = Path.Combine(Root, $"known-{Guid.NewGuid():N}");
        File.WriteAllText(path, string.Create(CultureInfo.InvariantCulture, $"# hosts\n[127.0.0.1]:{port} {File.ReadAllText(Path.Combine(Root, key + ".pub"))}"));
        if (isHashed)
        {
            Run("ssh-keygen", "-q", "-H", "-f", path);
        }

        return path;
    }

    public void Dispose()
    {
        server.Kill(entireProcessTree: true);
        server.WaitForExit();
        server.Dispose();
    }

    public static string Run(string program, params string[] words)
    {
        using var process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var complaints = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, complaints.Result);
        return said;
    }

    private void MakeKey(string name) => Run("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", name, "-f", Path.Combine(Root, name));

    private Process Start()
    {
        var started = Process.Start(new ProcessStartInfo("/usr/sbin/sshd", ["-D", "-e", "-f", Path.Combine(Root, "config")]) { RedirectStandardError = true })!;
        started.ErrorDataReceived += (_, _) => { };
        started.BeginErrorReadLine();
        for (var i = 0; i < 100; i++)
        {
            try
            {
                using var probe = new TcpClient();
                probe.Connect(IPAddress.Loopback, Port);
                return started;
            }
            catch (SocketException)
            {
                Thread.Sleep(100);
            }
        }

        throw new InvalidOperationException("sshd did not start; is Debian's openssh-server installed?");
    }
}
