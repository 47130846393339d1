namespace Journal.Cli.Tests.PowerCuts;

/// <summary>
/// A folder as a disk sees it while a program writes: what the program made so far, and beside it what was forced to the
/// disk. After Pillai and others, <i>All File Systems Are Not Created Equal</i> (OSDI 2014): until a file is flushed its
/// contents may be missing, until its folder is flushed its name may be, and either may reach the disk without the other.
/// </summary>
internal sealed class RecordedDisk
{
    private readonly string root;
    private readonly Folder top;

    /// <summary>Begins with a folder as it stands, all of it on the disk.</summary>
    public RecordedDisk(string root)
    {
        this.root = root;
        top = (Folder)Load(new DirectoryInfo(root));
        top.FlushAll();
    }

    /// <summary>How a power cut may leave what was not forced to the disk.</summary>
    public enum Loss
    {
        /// <summary>All of it is lost.</summary>
        Everything,

        /// <summary>Names are there, contents are not: files are empty or as they were flushed.</summary>
        Contents,

        /// <summary>Nothing is lost: the program alone was stopped.</summary>
        Nothing,
    }

    /// <summary>Whether a path lies in the folder.</summary>
    public bool Holds(string path) => path == root || path.StartsWith(root + "/", StringComparison.Ordinal);

    public void Open(string path, bool empties)
    {
        var (folder, name) = Place(path);
        var file = folder.Now.GetValueOrDefault(name) as Document;
        folder.Now[name] = file ??= new Document();
        file.Now = empties ? [] : file.Now;
    }

    public void Write(string path, byte[] bytes, int? offset)
    {
        if (Find(path) is Document file)
        {
            var at = offset ?? file.Now.Length;
            var longer = new byte[Math.Max(file.Now.Length, at + bytes.Length)];
            file.Now.CopyTo(longer, 0);
            bytes.CopyTo(longer, at);
            file.Now = longer;
        }
    }

    public void Cut(string path, int length)
    {
        if (Find(path) is Document file)
        {
            var cut = file.Now;
            Array.Resize(ref cut, length);
            file.Now = cut;
        }
    }

    public void MakeFolder(string path)
    {
        var (folder, name) = Place(path);
        folder.Now[name] = new Folder();
    }

    public void Rename(string from, string to)
    {
        var ((old, oldName), (now, nowName)) = (Place(from), Place(to));
        now.Now[nowName] = old.Now[oldName];
        old.Now.Remove(oldName);
    }

    public void Remove(string path)
    {
        var (folder, name) = Place(path);
        folder.Now.Remove(name);
    }

    public void Flush(string path) => Find(path)?.Flush();

    public void FlushAll() => top.FlushAll();

    /// <summary>The files by path, as a power cut would leave them now.</summary>
    public SortedDictionary<string, byte[]> After(Loss loss)
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        Gather(top, "", loss, files);
        return files;
    }

    private static void Gather(Folder folder, string path, Loss loss, SortedDictionary<string, byte[]> files)
    {
        foreach (var (name, thing) in loss == Loss.Everything ? folder.Flushed : folder.Now)
        {
            if (thing is Folder inner)
            {
                Gather(inner, $"{path}{name}/", loss, files);
            }
            else if (thing is Document file)
            {
                files[path + name] = loss == Loss.Nothing ? file.Now : file.Flushed ?? [];
            }
        }
    }

    private static Thing Load(FileSystemInfo info)
    {
        if (info is not DirectoryInfo directory)
        {
            return new Document { Now = File.ReadAllBytes(info.FullName) };
        }

        var folder = new Folder();
        foreach (var inner in directory.EnumerateFileSystemInfos())
        {
            folder.Now[inner.Name] = Load(inner);
        }

        return folder;
    }

    private (Folder Folder, string Name) Place(string path) => ((Folder)Find(Path.GetDirectoryName(path)!)!, Path.GetFileName(path));

    private Thing? Find(string path)
    {
        Thing? thing = top;
        foreach (var step in path[root.Length..].Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            thing = (thing as Folder)?.Now.GetValueOrDefault(step);
        }

        return thing;
    }

    private abstract class Thing
    {
        public abstract void Flush();

        public virtual void FlushAll() => Flush();
    }

    private sealed class Document : Thing
    {
        public byte[] Now { get; set; } = [];

        public byte[]? Flushed { get; private set; }

        public override void Flush() => Flushed = Now;
    }

    private sealed class Folder : Thing
    {
        public Dictionary<string, Thing> Now { get; } = new(StringComparer.Ordinal);

        public Dictionary<string, Thing> Flushed { get; private set; } = [];

        public override void Flush() => Flushed = new(Now, StringComparer.Ordinal);

        public override void FlushAll()
        {
            Flush();
            foreach (var inner in Now.Values)
            {
                inner.FlushAll();
            }
        }
    }
}
