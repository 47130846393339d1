namespace Journal.Site.Preview;

/// <summary>What open pages wait for: the number of the latest rebuild and the problems it met.</summary>
internal sealed class RebuildSignal
{
    private readonly Lock guard = new();
    private TaskCompletionSource changed = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>How many rebuilds there were.</summary>
    public int Version { get; private set; }

    /// <summary>The problems of the latest, for people; none where all is well.</summary>
    public IReadOnlyList<string> Problems { get; private set; } = [];

    /// <summary>Writes up a rebuild and wakes all who wait.</summary>
    public void Post(IReadOnlyList<string> problems)
    {
        TaskCompletionSource waiting;
        lock (guard)
        {
            Version++;
            Problems = problems;
            waiting = changed;
            changed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        }

        waiting.SetResult();
    }

    /// <summary>Waits until there is a later rebuild than one, or the time is up.</summary>
    public async Task WaitBeyond(int version, TimeSpan most, CancellationToken cancellation)
    {
        Task next;
        lock (guard)
        {
            if (Version != version)
            {
                return;
            }

            next = changed.Task;
        }

        await Task.WhenAny(next, Task.Delay(most, cancellation));
    }
}
