namespace Journal.Benchmarks.Programs;

/// <summary>A new folder to work in: in memory where the system has such a place, for what a disk makes of thousands of deleted files would be measured too.</summary>
internal static class WorkFolder
{
    /// <summary>Makes one; who asks deletes it.</summary>
    public static string Create()
    {
        var place = Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath();
        return Directory.CreateDirectory(Path.Combine(place, $"journal-benchmark-{Environment.ProcessId}")).FullName;
    }
}
