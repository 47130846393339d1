using Journal.Site.Photos;

namespace Journal.Site.Tests.Photos;

public class BoundedWorkTest
{
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(5);

    [Fact]
    public void WorkThatEnds_GivesItsResultOrWhatItThrew()
    {
        Assert.Equal(7, BoundedWork.Run(() => 7, Long));
        Assert.Equal("Mine.", Assert.Throws<InvalidDataException>(() => BoundedWork.Run<int>(() => throw new InvalidDataException("Mine."), Long)).Message);
    }

    [Fact]
    public void WorkThatNeverEnds_IsGivenUp_AndWhatComesLateIsDisposedOf()
    {
        using var late = new Late();
        var isWanted = true;

        Assert.Throws<TimeoutException>(() => BoundedWork.Run(
            () =>
            {
                SpinWait.SpinUntil(() => !Volatile.Read(ref isWanted));
                return late;
            },
            TimeSpan.FromMilliseconds(50)));

        Volatile.Write(ref isWanted, false);
        Assert.True(SpinWait.SpinUntil(() => late.IsDisposed, Long));
    }

    [Fact]
    public void WorkThatIsNotWantedAnyMore_IsNotWaitedFor()
    {
        using var stop = new CancellationTokenSource();
        using var end = new ManualResetEventSlim();

        Assert.ThrowsAny<OperationCanceledException>(() => BoundedWork.Run(
            () =>
            {
                stop.Cancel();
                end.Wait();
                return 0;
            },
            Long,
            stop.Token));
        end.Set();
    }

    private sealed class Late : IDisposable
    {
        private int disposed;

        public bool IsDisposed => Volatile.Read(ref disposed) > 0;

        public void Dispose() => Interlocked.Increment(ref disposed);
    }
}
