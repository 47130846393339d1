using System.Threading.Channels;
using Journal.Core.Writing.Bench;

namespace Journal.Bench.Slates;

/// <summary>
/// Does what phones and desks send, one after the other, under the same lock as the commands. What arrives while the disk is busy is
/// written together the next time, so ten phones wait no longer than two. An answer comes when all is on the disk.
/// </summary>
internal sealed class SlateWriter : IAsyncDisposable
{
    private const int MostWaiting = 1000;
    private const int MostTogether = 64;

    private readonly Channel<(Deed Deed, TaskCompletionSource<Outcome> Answer)> waiting = Channel.CreateBounded<(Deed, TaskCompletionSource<Outcome>)>(MostWaiting);
    private readonly JournalNow journal;
    private readonly TimeProvider clock;
    private readonly Task running;

    /// <summary>Writes from now on.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="clock">The clock.</param>
    public SlateWriter(JournalNow journal, TimeProvider clock)
    {
        (this.journal, this.clock) = (journal, clock);
        running = Task.Factory.StartNew(Run, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default).Unwrap();
    }

    /// <summary>Does something, once.</summary>
    /// <exception cref="IOException">The disk is full, or another command has held the journal for a minute; nothing was done.</exception>
    public async Task<Outcome> Do(Deed deed)
    {
        var answer = new TaskCompletionSource<Outcome>(TaskCreationOptions.RunContinuationsAsynchronously);
        await waiting.Writer.WriteAsync((deed, answer));
        return await answer.Task;
    }

    /// <summary>Ends when all that has arrived is written.</summary>
    public async ValueTask DisposeAsync()
    {
        waiting.Writer.TryComplete();
        await running;
    }

    private async Task Run()
    {
        while (await waiting.Reader.WaitToReadAsync())
        {
            var together = new List<(Deed Deed, TaskCompletionSource<Outcome> Answer)>();
            while (together.Count < MostTogether && waiting.Reader.TryRead(out var next))
            {
                together.Add(next);
            }

            Answer(together);
        }
    }

    private void Answer(List<(Deed Deed, TaskCompletionSource<Outcome> Answer)> together)
    {
        try
        {
            var outcomes = Do([.. together.Select(one => one.Deed)]);
            foreach (var (one, outcome) in together.Zip(outcomes))
            {
                one.Answer.SetResult(outcome);
            }
        }
#pragma warning disable CA1031 // Whoever waits is told; the next may have better luck.
        catch (Exception e)
#pragma warning restore CA1031
        {
            together.ForEach(one => one.Answer.TrySetException(e));
        }
    }

    private List<Outcome> Do(IReadOnlyList<Deed> deeds)
    {
        using var file = SlateFile.Take(journal.Folder);
        var hands = new Hands(journal, file, clock.GetUtcNow());
        var outcomes = deeds.Select(deed => Do(deed, hands)).ToList();
        hands.Flush();
        return outcomes;
    }

    private static Outcome Do(Deed deed, Hands hands)
    {
        if (hands.Slate.HasDone(deed.Id))
        {
            return new Outcome(true, "Kept already.");
        }

        try
        {
            var said = deed.Do(hands);
            if (!hands.Slate.HasDone(deed.Id))
            {
                hands.Put(hands.Slate.WithDone(deed.Id));
            }

            return new Outcome(true, said);
        }
        catch (RefusedException e)
        {
            return new Outcome(false, e.Message);
        }
    }
}
