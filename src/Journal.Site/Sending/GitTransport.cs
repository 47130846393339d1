using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Journal.Core.Model;
using Journal.Site.Photos;

namespace Journal.Site.Sending;

/// <summary>
/// Brings files to a branch as one commit, made in a repository of its own that is gone afterwards: no work tree is touched,
/// and readers see all of it or nothing.
/// </summary>
internal sealed class GitTransport(GitDestination destination, string repository, string maker, DateOnly today) : ITransport
{
    private const string Ours = "refs/heads/sending";
    private HeldFolder? workshop;
    private string? tip;
    private Process? import;

    /// <inheritdoc/>
    public int AtOnce => 1;

    /// <inheritdoc/>
    public bool ArrivesAtOnce => true;

    /// <inheritdoc/>
    public string? Draft => null;

    /// <inheritdoc/>
    public async Task OpenAsync(CancellationToken cancellation)
    {
        if (workshop is null)
        {
            workshop = HeldFolder.OfUser();
            await Git(["init", "--quiet", "--bare", "."], cancellation);
        }

        var heads = Encoding.UTF8.GetString(await Git(["ls-remote", "--", repository, $"refs/heads/{destination.Branch}"], cancellation));
        if (heads.Length == 0)
        {
            return;
        }

        // The latest commit and its list of files are all that is needed; servers that can leave the contents out do.
        await Git(["fetch", "--quiet", "--no-tags", "--depth=1", "--filter=blob:none", "--", repository, $"+refs/heads/{destination.Branch}:{Ours}"], cancellation);
        tip = Encoding.UTF8.GetString(await Git(["rev-parse", Ours], cancellation)).Trim();
    }

    /// <inheritdoc/>
    public async Task<byte[]?> ReadAsync(string address, CancellationToken cancellation)
    {
        if (tip is null)
        {
            return null;
        }

        var place = SiteAddress.Behind(destination.Folder, address);
        var found = await Git(["ls-tree", "--full-tree", "--name-only", tip, "--", place], cancellation);
        return found.Length == 0 ? null : await Git(["cat-file", "blob", $"{tip}:{place}"], cancellation);
    }

    /// <inheritdoc/>
    public async IAsyncEnumerable<(string Address, long Length)> ListAsync([EnumeratorCancellation] CancellationToken cancellation)
    {
        if (tip is null)
        {
            yield break;
        }

        var names = Encoding.UTF8.GetString(await Git(["ls-tree", "-r", "-z", "--full-tree", "--name-only", tip], cancellation));
        var top = destination.Folder.Length == 0 ? "" : destination.Folder + "/";
        foreach (var name in names.Split('\0', StringSplitOptions.RemoveEmptyEntries).Where(name => name.StartsWith(top, StringComparison.Ordinal)))
        {
            yield return (name[top.Length..], -1);
        }
    }

    /// <inheritdoc/>
    public async Task PutAsync(OutgoingFile file, CancellationToken cancellation)
    {
        await Import($"M 100644 inline {Place(file.Address)}\ndata {file.Contents.Length.ToString(CultureInfo.InvariantCulture)}\n", cancellation);
        await import!.StandardInput.BaseStream.WriteAsync(file.Contents, cancellation);
        await Import("\n", cancellation);
    }

    /// <inheritdoc/>
    public Task DeleteAsync(string address, CancellationToken cancellation) => Import($"D {Place(address)}\n", cancellation);

    // A branch has no empty folders.
    /// <inheritdoc/>
    public Task RemoveEmptyFoldersAsync(IReadOnlyCollection<string> deleted, CancellationToken cancellation) => Task.CompletedTask;

    /// <inheritdoc/>
    public async Task FinishAsync(CancellationToken cancellation)
    {
        if (import is null)
        {
            return;
        }

        var complaints = import.StandardError.ReadToEndAsync(cancellation);
        import.StandardInput.Close();
        await import.WaitForExitAsync(cancellation);
        Expect(import, await complaints);
        await Git(["push", "--quiet", "--", repository, $"{Ours}:refs/heads/{destination.Branch}"], cancellation);
    }

    /// <inheritdoc/>
    public bool MayPass(Exception failure) => failure is GitUnreachableException;

    /// <inheritdoc/>
    public string? Explain(Exception failure) => failure is Win32Exception ? "`git` could not be started. Is it installed?" : null;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (import is { HasExited: false })
        {
            import.Kill(entireProcessTree: true);
            await import.WaitForExitAsync();
        }

        import?.Dispose();
        workshop?.Dispose();
    }

    // Addresses hold no control characters, quotes or backslashes: quoted, they are what fast-import reads as they are.
    private string Place(string address) => SiteAddress.IsSafe(address) ? $"\"{SiteAddress.Behind(destination.Folder, address)}\""
        : throw new ArgumentException("The address leads out of the site.", nameof(address));

    private async Task Import(string text, CancellationToken cancellation)
    {
        if (import is null)
        {
            import = Process.Start(Call(["fast-import", "--quiet"]))!;
            await Import(Head(), cancellation);
        }

        await import.StandardInput.BaseStream.WriteAsync(Encoding.UTF8.GetBytes(text), cancellation);
    }

    // A commit tells the day it was made; the time of day is left at noon for everybody.
    private string Head()
    {
        var moment = new DateTimeOffset(today.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero).ToUnixTimeSeconds();
        var name = new string([.. maker.Where(letter => letter is not ('<' or '>') && !char.IsControl(letter))]).Trim();
        var who = string.Create(CultureInfo.InvariantCulture, $"{(name.Length == 0 ? "Journal" : name)} <journal@site.invalid> {moment} +0000");
        const string Message = "Send the site";
        return $"commit {Ours}\ncommitter {who}\ndata {Message.Length}\n{Message}\n" + (tip is null ? "" : $"from {tip}\n");
    }

    private async Task<byte[]> Git(string[] words, CancellationToken cancellation)
    {
        using var git = Process.Start(Call(words))!;
        git.StandardInput.Close();
        using var output = new MemoryStream();
        var complaints = git.StandardError.ReadToEndAsync(cancellation);
        await git.StandardOutput.BaseStream.CopyToAsync(output, cancellation);
        await git.WaitForExitAsync(cancellation);
        Expect(git, await complaints);
        return output.ToArray();
    }

    private static void Expect(Process git, string complaints)
    {
        if (git.ExitCode != 0)
        {
            var said = string.Join(' ', complaints.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
            throw GitUnreachableException.IsSaidBy(said) ? new GitUnreachableException($"git says: {said}") : new SendingException($"git says: {said}");
        }
    }

    private ProcessStartInfo Call(string[] words)
    {
        var start = new ProcessStartInfo("git", words)
        {
            WorkingDirectory = workshop!.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };

        // A hook runs with variables that point git at the repository of the hook; ours is another.
        foreach (var name in start.Environment.Keys.Where(IsOfHook).ToList())
        {
            start.Environment.Remove(name);
        }

        // From a timer nobody can answer.
        start.Environment["GIT_TERMINAL_PROMPT"] = "0";

        // What it says is then English, in whatever language the maker's system speaks.
        start.Environment["LC_ALL"] = "C";
        return start;
    }

    private static bool IsOfHook(string name) => name is "GIT_DIR" or "GIT_WORK_TREE" or "GIT_INDEX_FILE" or "GIT_OBJECT_DIRECTORY"
        or "GIT_ALTERNATE_OBJECT_DIRECTORIES" or "GIT_PREFIX" or "GIT_QUARANTINE_PATH" or "GIT_COMMON_DIR" or "GIT_NAMESPACE" or "GIT_CEILING_DIRECTORIES";
}
