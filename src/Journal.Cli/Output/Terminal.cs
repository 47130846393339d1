using System.Text;
using Journal.Core.Parsing.Text;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Output;

/// <summary>
/// What the program talks to. Results go to <see cref="Out"/>, all else to <see cref="Error"/>; tests read both as a
/// maker does.
/// </summary>
/// <param name="Out">Takes results.</param>
/// <param name="Error">Takes complaints and pointers.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error)
{
    private const int PlainWidth = 80;
    private const int NarrowestUseful = 40;
    private const int WidestUseful = 100;

    /// <summary>Whether someone reads the results as they come; false for files and pipes.</summary>
    public bool IsTerminal { get; init; }

    /// <summary>Whether results may be coloured; never but on a terminal.</summary>
    public bool HasColour { get; init; }

    /// <summary>How many cells a line has.</summary>
    public int Width { get; init; } = PlainWidth;

    /// <summary>The folder that the maker stands in.</summary>
    public required string Folder { get; init; }

    /// <summary>The date on the clock of the bench.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The instant on the clock, for commands that measure time.</summary>
    public DateTimeOffset Now { get; init; } = DateTimeOffset.UtcNow;

    /// <summary>Today at a journal's bench, whose time zone need not be that of this machine.</summary>
    public DateOnly TodayAt(string journal) =>
        BenchClock.DayAt(journal, Now) is { } there ? Today.AddDays(there.DayNumber - DateOnly.FromDateTime(Now.LocalDateTime).DayNumber) : Today;

    /// <summary>Takes answers.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>Whether someone is there to answer; false in a script.</summary>
    public bool CanAsk { get; init; }

    /// <summary>Opens a file in the maker's editor and waits for it; null where no editor is set.</summary>
    public Action<string>? Edit { get; init; }

    /// <summary>How many lines can be seen at once; 0 where that is not known.</summary>
    public int Height { get; init; }

    /// <summary>Shows a long text page by page and waits until the maker has read it; null where it is to run through.</summary>
    public Action<string>? Page { get; init; }

    /// <summary>What kept results from arriving where they were to go; null where nothing did.</summary>
    public Func<Exception?> LostResults { get; init; } = () => null;

    /// <summary>Hears when the maker wants the program to end; null where nobody can.</summary>
    public Stopping? Stopping { get; init; }

    /// <summary>The terminal, file or pipe that this process was given: UTF-8 without a byte-order mark, NO_COLOR kept.</summary>
    public static Terminal OfThisProcess(Stopping stopping)
    {
        var isTerminal = !Console.IsOutputRedirected;
        if (OperatingSystem.IsWindows() && isTerminal)
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        }

#pragma warning disable CA2000 // The process's own streams live as long as it does; whoever writes results flushes them.
        var results = new OutgoingStream(Console.OpenStandardOutput);
        return new Terminal(Writer(results, flushes: false), Writer(new OutgoingStream(Console.OpenStandardError), flushes: true))
#pragma warning restore CA2000
        {
            LostResults = () => results.Failure,
            IsTerminal = isTerminal,
            HasColour = WantsColour(isTerminal, Environment.GetEnvironmentVariable),
            Width = isTerminal && Console.WindowWidth is > 0 and var cells ? Math.Clamp(cells, NarrowestUseful, WidestUseful) : PlainWidth,
            Folder = Environment.CurrentDirectory,
            Today = DateOnly.FromDateTime(DateTime.Now),
            In = Console.In,
            CanAsk = !Console.IsInputRedirected && !Console.IsErrorRedirected,
            Edit = MakersEditor.Find(Environment.GetEnvironmentVariable) is { } edit ? path => stopping.Hold(() => edit(path)) : null,
            Height = isTerminal && Console.WindowHeight is > 0 and var lines ? lines : 0,
            Page = isTerminal && MakersPager.Find(Environment.GetEnvironmentVariable) is { } page ? text => stopping.Hold(() => page(text)) : null,
            Stopping = stopping,
        };
    }

    /// <summary>
    /// Colour on a terminal that can show it, unless NO_COLOR is there and not empty (no-color.org, from memory).
    /// </summary>
    public static bool WantsColour(bool isTerminal, Func<string, string?> variable) =>
        isTerminal && string.IsNullOrEmpty(variable("NO_COLOR")) && variable("TERM") != "dumb";

    /// <summary>
    /// Shows an answer: page by page where it is longer than the screen and the maker has a pager; else as it comes, and then
    /// what matters most is said once more at the end, for its beginning has scrolled away.
    /// </summary>
    /// <param name="print">Prints the answer.</param>
    /// <param name="matters">What matters most, which the answer begins with; null where it needs no repeating.</param>
    public void Show(Action<Printout> print, string? matters = null)
    {
        if (!IsTerminal || Height == 0)
        {
            print(new Printout(this));
            return;
        }

        using var answer = new StringWriter { NewLine = Out.NewLine };
        print(new Printout(this with { Out = answer }));
        var text = answer.ToString();
        var isLong = text.AsSpan().Count('\n') >= Height;
        if (isLong && Page is not null)
        {
            Out.Flush();
            Page(text);
            return;
        }

        Out.Write(text);
        if (isLong && matters is not null)
        {
            Out.WriteLine();
            new Printout(this).Say(matters, Ink.Strong);
        }
    }

    /// <summary>Says what stands should the maker stop the program from here on.</summary>
    public void IfStopped(Func<string> whatStands)
    {
        if (Stopping is not null)
        {
            Stopping.WhatStands = whatStands;
        }
    }

    /// <summary>Says something on standard error.</summary>
    public void Complain(string line) => Error.WriteLine(Printable.Of(line));

    private static StreamWriter Writer(Stream stream, bool flushes) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = flushes, NewLine = "\n" };
}
