namespace Journal.Site.Photos;

/// <summary>
/// Does what a damaged or crafted file might keep busy for ever, for so much time and no more. The library's decoders cannot be
/// stopped from outside: one that never ends is left alone with its thread, which holds up neither others nor the program's end.
/// </summary>
internal static class BoundedWork
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);

    /// <summary>Does some work.</summary>
    /// <param name="work">What is to be done, on a thread of its own. What comes too late is disposed of.</param>
    /// <param name="most">The longest that it may take: by the clock, and in time of the processor as well, for a machine may be busy with other things.</param>
    /// <param name="cancellation">Ends the waiting at once.</param>
    /// <exception cref="TimeoutException">It has taken longer.</exception>
    /// <exception cref="OperationCanceledException">It is not wanted any more.</exception>
    public static T Run<T>(Func<T> work, TimeSpan most, CancellationToken cancellation = default)
    {
        var (begun, used) = (Environment.TickCount64, Environment.CpuUsage.TotalTime);
        var outcome = Start(work);
        try
        {
            while (Task.WaitAny([outcome], (int)Look.TotalMilliseconds, cancellation) < 0)
            {
                if (Environment.TickCount64 - begun > most.TotalMilliseconds && Environment.CpuUsage.TotalTime - used > most)
                {
                    throw new TimeoutException("It has taken too long.");
                }
            }
        }
        catch
        {
            _ = outcome.ContinueWith(late => (late is { IsCompletedSuccessfully: true, Result: IDisposable result } ? result : null)?.Dispose(), TaskScheduler.Default);
            throw;
        }

        return outcome.GetAwaiter().GetResult();
    }

    private static Task<T> Start<T>(Func<T> work)
    {
        var outcome = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        var thread = new Thread(() =>
        {
            try
            {
                outcome.SetResult(work());
            }
#pragma warning disable CA1031 // Whoever waits for the outcome is told.
            catch (Exception e)
#pragma warning restore CA1031
            {
                outcome.SetException(e);
            }
        })
        {
            IsBackground = true,
            Name = "Decoding",
        };
        thread.Start();
        return outcome.Task;
    }
}
