using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Cli.Tests.PowerCuts;

/// <summary>The calls by which a program changed a folder, as <c>strace -f -y -xx</c> wrote them down, in the order in which they ended.</summary>
internal static partial class SystemCalls
{
    /// <summary>The calls to ask for.</summary>
    public const string Asked = "openat,creat,write,pwrite64,writev,pwritev,fsync,fdatasync,syncfs,rename,renameat,renameat2,link,linkat,unlink,unlinkat,mkdir,mkdirat,rmdir,ftruncate,copy_file_range,sendfile";

    /// <summary>Plays all calls on a disk.</summary>
    /// <param name="log">What strace wrote.</param>
    /// <param name="disk">The disk.</param>
    /// <param name="after">Is called after each call that changed something, with the call.</param>
    /// <returns>How many calls changed something.</returns>
    public static int Replay(string log, RecordedDisk disk, Action<string> after)
    {
        var begun = new Dictionary<string, string>(StringComparer.Ordinal);
        var played = 0;
        foreach (var line in File.ReadLines(log))
        {
            // Another thread may come in between the beginning of a call and its end.
            var (thread, call) = (line[..line.IndexOf(' ', StringComparison.Ordinal)], line[line.IndexOf(' ', StringComparison.Ordinal)..].Trim());
            if (call.EndsWith("<unfinished ...>", StringComparison.Ordinal))
            {
                begun[thread] = call[..^"<unfinished ...>".Length];
                continue;
            }

            if (Resumed().Match(call) is { Success: true } resumed)
            {
                call = begun[thread] + call[resumed.Length..];
            }

            if (Play(call, disk))
            {
                played++;
                after(Words(call));
            }
        }

        return played;
    }

    private static bool Play(string call, RecordedDisk disk)
    {
        if (Call().Match(call) is not { Success: true } match || match.Groups["result"].Value.StartsWith('-'))
        {
            return false;
        }

        var (name, rest) = (match.Groups["name"].Value, match.Groups["rest"].Value);
        var texts = Quoted().Matches(rest).Select(one => Bytes(one.Groups["text"].Value)).ToList();
        var paths = texts.Select(Encoding.UTF8.GetString).ToList();
        var handle = Encoding.UTF8.GetString(Bytes(Handle().Match(rest).Groups["path"].Value));
        switch (name)
        {
            case "openat" when paths.Count > 0 && disk.Holds(paths[0]) && Made().IsMatch(rest):
                disk.Open(paths[0], rest.Contains("O_TRUNC", StringComparison.Ordinal));
                return true;
            case "write" or "pwrite64" when disk.Holds(handle):
                disk.Write(handle, texts[0], name == "write" ? null : LastNumber(rest));
                return true;
            case "ftruncate" when disk.Holds(handle):
                disk.Cut(handle, LastNumber(rest));
                return true;
            case "fsync" or "fdatasync" when disk.Holds(handle):
                disk.Flush(handle);
                return true;
            case "syncfs":
                disk.FlushAll();
                return true;
            case "rename" or "renameat" or "renameat2" when disk.Holds(paths[0]) || disk.Holds(paths[1]):
                disk.Rename(paths[0], paths[1]);
                return true;
            case "unlink" or "unlinkat" or "rmdir" when paths.Count > 0 && disk.Holds(paths[0]):
                disk.Remove(paths[0]);
                return true;
            case "mkdir" or "mkdirat" when disk.Holds(paths[0]):
                disk.MakeFolder(paths[0]);
                return true;
            case "writev" or "pwritev" or "copy_file_range" or "sendfile" or "link" or "linkat" or "creat" when paths.Concat([handle]).Any(disk.Holds):
                throw new NotSupportedException($"The replay does not know this call: {Words(call)}");
            default:
                return false;
        }
    }

    private static int LastNumber(string rest) => int.Parse(Numbers().Match(rest).Groups["number"].Value, CultureInfo.InvariantCulture);

    private static byte[] Bytes(string hex) => Convert.FromHexString(hex.Replace("\\x", "", StringComparison.Ordinal));

    private static string Words(string call) => Quoted().Replace(call, one => $"\"{Encoding.UTF8.GetString(Bytes(one.Groups["text"].Value))}\"");

    [GeneratedRegex(@"^(?<name>\w+)\((?<rest>.*)\)\s+=\s+(?<result>-?\w+)", RegexOptions.Singleline)]
    private static partial Regex Call();

    [GeneratedRegex(@"^<\.\.\. \w+ resumed>")]
    private static partial Regex Resumed();

    [GeneratedRegex("\"(?<text>(\\\\x[0-9a-f]{2})*)\"")]
    private static partial Regex Quoted();

    // A handle with its path, where no text comes before it.
    [GeneratedRegex(@"^\d+<(?<path>(\\x[0-9a-f]{2})*)>")]
    private static partial Regex Handle();

    [GeneratedRegex("O_CREAT|O_TRUNC")]
    private static partial Regex Made();

    [GeneratedRegex(@",\s*(?<number>\d+)$")]
    private static partial Regex Numbers();
}
