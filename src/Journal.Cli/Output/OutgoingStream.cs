namespace Journal.Cli.Output;

/// <summary>
/// Standard output or standard error, which may be closed, or a file on a full disk. What cannot be written there stops
/// nothing: a command does to files what it was asked to, and only then one looks whether its words arrived.
/// </summary>
internal sealed class OutgoingStream : Stream
{
    private readonly Stream to = Null;

    /// <summary>Opens where it goes; a stream that is closed cannot be.</summary>
    public OutgoingStream(Func<Stream> open)
    {
        try
        {
            to = open();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Failure = new UnauthorizedAccessException(e.Message, e);
        }
    }

    /// <summary>What kept words from arriving; null where nothing did.</summary>
    public Exception? Failure { get; private set; }

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        try
        {
            to.Write(buffer);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Failure ??= e;
        }
    }

    public override void Flush()
    {
        // Nothing is held back here.
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            to.Dispose();
        }

        base.Dispose(disposing);
    }
}
