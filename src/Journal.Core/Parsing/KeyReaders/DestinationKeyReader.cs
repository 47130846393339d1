using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads <c>destinations</c> of journal.yaml: a name for each place that the site is sent to.</summary>
internal static partial class DestinationKeyReader
{
    private const string Example = "Write `folder: /srv/www/bench`, or one of `sftp`, `git` and `s3` with its keys.";

    /// <summary>All destinations that can be read.</summary>
    public static IReadOnlyList<NamedDestination> ReadAll(Fields journal, FileScope scope)
    {
        if (journal["destinations"] is not { } node)
        {
            return [];
        }

        if (node is not MapNode names)
        {
            scope.Log.Add(ProblemTable.NotKeys, node.Place);
            return [];
        }

        return [.. journal.Pairs(names).Select(pair => Read(journal, pair.Key, pair.Value, scope)).OfType<NamedDestination>()];
    }

    private static NamedDestination? Read(Fields journal, TextNode name, Node value, FileScope scope)
    {
        if (journal.NewId(name, "destinations") is not { } id || journal.Map(value, Keys.Destination) is not { } fields)
        {
            return null;
        }

        string[] kinds = [.. Keys.DestinationKinds.Where(fields.Has)];
        if (kinds.Length > 1 || (kinds.Length == 0 && !fields.Has("folder")))
        {
            scope.Log.Add(ProblemTable.DestinationUnclear, name.Place, id, kinds.Length == 0 ? "has no place" : $"is {string.Join(" and ", kinds)} at once", Example);
            return null;
        }

        var kind = kinds.Length == 0 ? "folder" : kinds[0];
        foreach (var key in Keys.Destination.Where(fields.Has).Except(Keys.OfDestination(kind)))
        {
            scope.Log.Add(ProblemTable.DestinationUnclear, fields.PlaceOfKey(key), id, $"has a `{key}`, which does not belong to `{kind}`", "Remove it.");
        }

        return Read(kind, new Id<NamedDestination>(id), fields, scope);
    }

    private static NamedDestination? Read(string kind, Id<NamedDestination> name, Fields fields, FileScope scope)
    {
        if (fields.Text(kind) is not { } where || HoldsSecret(where, fields[kind]!.Place, scope))
        {
            return null;
        }

        if (kind == "folder")
        {
            return new FolderDestination(name, where);
        }

        if (Folder(fields, kind, scope) is not { } folder)
        {
            return null;
        }

        return kind switch
        {
            "sftp" => Sftp(name, where, folder, fields, scope),
            "git" => new GitDestination(name, where, fields.Text("branch") ?? "site", folder),
            _ => new S3Destination(name, where, folder) { Region = fields.Text("region"), Service = fields.Address("service"), Profile = fields.Text("profile") },
        };
    }

    private static SftpDestination? Sftp(Id<NamedDestination> name, string host, string folder, Fields fields, FileScope scope)
    {
        if (!Host().IsMatch(host))
        {
            scope.Log.Add(ProblemTable.NotAChoice, fields["sftp"]!.Place, host, "sftp", "Write only the server's name, such as `bench.example.org`; user, port and folder have their own keys.");
            return null;
        }

        var port = fields.Count("port");
        if (port > ushort.MaxValue)
        {
            scope.Log.Add(ProblemTable.NotANumber, fields["port"]!.Place, port, "port", "Write a whole number from 1 to 65535.");
        }

        if (fields.Text("host-key") is { } print && !Fingerprint().IsMatch(print))
        {
            scope.Log.Add(ProblemTable.NotAChoice, fields["host-key"]!.Place, print, "host-key", "Write `SHA256:` and 43 characters, as `ssh-keygen -l -f` prints them on the server.");
        }

        return new SftpDestination(name, host, folder)
        {
            Port = port ?? 22,
            User = fields.Text("user"),
            Key = fields.Text("key"),
            HostKey = fields.Text("host-key"),
            KnownHosts = fields.Text("known-hosts"),
        };
    }

    // On a server a folder may begin at its root; in a branch or a bucket there is nothing above the top.
    private static string? Folder(Fields fields, string kind, FileScope scope)
    {
        var folder = fields.Text("folder") ?? "";
        var steps = folder.Split('/');
        if (folder.Contains('\\', StringComparison.Ordinal) || steps.Contains("..") || (kind != "sftp" && folder.StartsWith('/')))
        {
            scope.Log.Add(ProblemTable.NotAChoice, fields["folder"]!.Place, folder, "folder", "Write the folder with `/` between names, without `..`, such as `www/bench`.");
            return null;
        }

        var inner = string.Join('/', steps.Where(step => step.Length > 0 && step != "."));
        return folder.StartsWith('/') ? "/" + inner : inner;
    }

    private static bool HoldsSecret(string where, Model.Place place, FileScope scope)
    {
        if (!Password().IsMatch(where))
        {
            return false;
        }

        scope.Log.Add(ProblemTable.SecretInJournal, place);
        return true;
    }

    [GeneratedRegex("^[A-Za-z0-9](?:[A-Za-z0-9.:-]*[A-Za-z0-9])?$", RegexOptions.CultureInvariant)]
    private static partial Regex Host();

    // ssh-keygen's form: the SHA-256 of the key in base 64 without padding.
    [GeneratedRegex("^SHA256:[A-Za-z0-9+/]{43}=?$", RegexOptions.CultureInvariant)]
    private static partial Regex Fingerprint();

    // RFC 3986, 3.2.1: what stands before the @, with a colon in it, or alone where it is long enough to be a token.
    [GeneratedRegex("^[A-Za-z][A-Za-z0-9+.-]*://(?:[^/@]*:[^/@]+|[^/@:]{20,})@", RegexOptions.CultureInvariant)]
    private static partial Regex Password();
}
