using System.Runtime.InteropServices;

namespace Journal.Cli;

/// <summary>
/// Ctrl-C, or the system's own request to end, at any moment. A command that looks out for it ends by itself and tidies
/// up; one that does not, or is in the midst of something long, is ended within the second. Either way one sentence says
/// what stands. Nothing is lost by it: whatever the program writes is whole even when it is killed.
/// </summary>
internal sealed class Stopping : IDisposable
{
    /// <summary>How long a command has to end by itself: what is left of a second is for the system.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(700);

    /// <summary>
    /// SIGXFSZ of Linux and macOS: a file grew beyond <c>ulimit -f</c>. Heard, so that writing fails with an error that
    /// can be told (write(2), EFBIG), and the program is not ended without a word.
    /// </summary>
    private const PosixSignal FileTooLarge = (PosixSignal)25;

    private readonly CancellationTokenSource asked = new();
    private readonly List<PosixSignalRegistration> signals = [];
    private Action<string> say = _ => { };
    private volatile bool isHeld;
    private volatile bool endsByItself;
    private int requests;
    private int ended;

    /// <summary>Is cancelled when the program shall end.</summary>
    public CancellationToken Token => asked.Token;

    /// <summary>What stands if the program ends now, in a sentence.</summary>
    public Func<string> WhatStands { get; set; } = () => "Your files are unchanged.";

    /// <summary>The exit status of a program that was stopped.</summary>
    public int Status { get; set; } = ExitStatus.NotFinished;

    /// <summary>What is said when the program was stopped.</summary>
    public string Sentence => $"Stopped. {WhatStands()}";

    /// <summary>Listens for requests to end from now on.</summary>
    /// <param name="endsByItself">Whether the command looks at <see cref="Token"/>.</param>
    /// <param name="say">Says the sentence.</param>
    public void Watch(bool endsByItself, Action<string> say)
    {
        (this.endsByItself, this.say) = (endsByItself, say);
        foreach (var signal in new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP })
        {
            signals.Add(PosixSignalRegistration.Create(signal, Hear));
        }

        if (!OperatingSystem.IsWindows())
        {
            signals.Add(PosixSignalRegistration.Create(FileTooLarge, request => request.Cancel = true));
        }
    }

    /// <summary>Lets another program have the keyboard, and with it Ctrl-C.</summary>
    public void Hold(Action action)
    {
        isHeld = true;
        try
        {
            action();
        }
        finally
        {
            isHeld = false;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // The command has ended by itself: from here on nobody else may say how.
        if (Interlocked.Exchange(ref ended, 1) != 0)
        {
            Thread.Sleep(Timeout.Infinite);
        }

        // Signals are heard to the end, and come to nothing: one at the very last must not make a command that ended well
        // end as one that was killed.
        asked.Dispose();
    }

    private void Hear(PosixSignalContext request)
    {
        request.Cancel = true;
        if (Volatile.Read(ref ended) != 0 || (isHeld && request.Signal == PosixSignal.SIGINT))
        {
            return;
        }

        // A second request will not wait.
        var wait = endsByItself && Interlocked.Increment(ref requests) == 1 ? Grace : TimeSpan.Zero;
        new Thread(() => EndAfter(wait)) { IsBackground = true, Priority = ThreadPriority.Highest }.Start();
        try
        {
            asked.Cancel();
        }
        catch (ObjectDisposedException)
        {
            return; // The command has just ended by itself.
        }
    }

    private void EndAfter(TimeSpan wait)
    {
        Thread.Sleep(wait);
        if (Interlocked.Exchange(ref ended, 1) == 0)
        {
            say(Sentence);
            Environment.Exit(Status);
        }
    }
}
