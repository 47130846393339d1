namespace Journal.Site.Sending;

/// <summary>Tries again what may pass by itself, waiting twice as long each time.</summary>
/// <param name="Tries">How often in all.</param>
/// <param name="FirstWait">How long before the second try.</param>
internal sealed record RetryPolicy(int Tries, TimeSpan FirstWait)
{
    /// <summary>Six tries within a quarter of a minute.</summary>
    public static RetryPolicy Usual { get; } = new(6, TimeSpan.FromMilliseconds(500));

    /// <summary>Does something, again and again while the failure may pass.</summary>
    public async Task<T> Try<T>(Func<CancellationToken, Task<T>> action, Func<Exception, bool> mayPass, CancellationToken cancellation)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await action(cancellation);
            }
            catch (Exception e) when (attempt < Tries && !cancellation.IsCancellationRequested && mayPass(e))
            {
                await Task.Delay(Wait(attempt), cancellation);
            }
        }
    }

    /// <summary>The same without a result.</summary>
    public Task Try(Func<CancellationToken, Task> action, Func<Exception, bool> mayPass, CancellationToken cancellation) => Try(
        async stop =>
        {
            await action(stop);
            return true;
        },
        mayPass,
        cancellation);

#pragma warning disable CA5394 // A spread of waiting times keeps no secret.
    private TimeSpan Wait(int attempt) => FirstWait * Math.Pow(2, attempt - 1) * (0.75 + Random.Shared.NextDouble() / 2);
#pragma warning restore CA5394
}
