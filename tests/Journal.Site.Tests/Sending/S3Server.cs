using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

/// <summary>A server on loopback that speaks the S3 protocol (npm's s3rver), with a bucket of its own.</summary>
/// <remarks>Its list pages are sealed with a cipher that newer OpenSSL has among the old ones only.</remarks>
internal sealed class S3Server : IDisposable
{
    public const string Bucket = "bench-book";
    public const string Id = "S3RVER";
    public const string Secret = "S3RVER";
    private readonly Process server;
    private readonly string root;

    public S3Server(string root)
    {
        this.root = Path.Combine(root, "s3");
        Port = SshServer.FreePort();
        var program = Path.Combine(Tools(), "node_modules", "s3rver", "bin", "s3rver.js");
        server = Process.Start(new ProcessStartInfo(
            "node",
            ["--openssl-legacy-provider", program, "--directory", this.root, "--port", Port.ToString(CultureInfo.InvariantCulture), "--address", "127.0.0.1", "--silent", "--configure-bucket", Bucket])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        server.ErrorDataReceived += (_, _) => { };
        server.OutputDataReceived += (_, _) => { };
        server.BeginErrorReadLine();
        server.BeginOutputReadLine();
        Wait();
    }

    public int Port { get; }

    /// <summary>Puts a whole site into the store as a finished send would have, in the server's own files.</summary>
    public void Hold(string site, string folder)
    {
        var files = SiteToSend.FilesOf(site);
        foreach (var address in files.Keys)
        {
            Hold($"{folder}/{address}", File.ReadAllBytes(Path.Combine(site, address)));
        }

        Hold($"{folder}/{SentManifest.Address}", new SentManifest(new("0b9c1f6e-6a36-4c0f-9a60-54d1f0a7c2de"), "The bench", files).ToBytes());
    }

    /// <summary>What lies in a folder of the bucket, from the server's own files: what it tells of a broken upload it may not know itself.</summary>
    public Dictionary<string, string> Objects(string folder)
    {
        const string Ending = "._S3rver_object";
        return SiteOnDisk.Contents(Path.Combine(root, Bucket, folder))
            .Where(file => file.Key.EndsWith(Ending, StringComparison.Ordinal))
            .ToDictionary(file => file.Key[..^Ending.Length], file => file.Value, StringComparer.Ordinal);
    }

    public void Dispose()
    {
        server.Kill(entireProcessTree: true);
        server.WaitForExit();
        server.Dispose();
    }

    private void Hold(string key, byte[] contents)
    {
        var path = Path.Combine(root, Bucket, key + "._S3rver_object");
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, contents);
    }

    private static string Tools()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Journal.sln")))
        {
            folder = folder.Parent!;
        }

        return Path.Combine(folder.FullName, "tests", ".tools");
    }

    private void Wait()
    {
        for (var i = 0; i < 300; i++)
        {
            try
            {
                using var probe = new TcpClient();
                probe.Connect(IPAddress.Loopback, Port);
                return;
            }
            catch (SocketException)
            {
                Thread.Sleep(100);
            }
        }

        throw new InvalidOperationException("s3rver did not start; tests/run.sh installs it under tests/.tools.");
    }
}
