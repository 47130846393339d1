using Journal.Core.Model;

namespace Journal.Core.Import;

/// <summary>What an older log gives, before anything is written.</summary>
/// <param name="Entries">The entries to write.</param>
/// <param name="Rows">What goes into them, for a table that the maker sees first.</param>
/// <param name="Faults">What could not be read.</param>
/// <param name="Already">How many things were taken in before and are left out.</param>
public sealed record ImportedLog(IReadOnlyList<NewEntryFile> Entries, IReadOnlyList<ImportedRow> Rows, IReadOnlyList<ImportFault> Faults, int Already)
{
    /// <summary>Whether it is a folder of notes, and not a table.</summary>
    public bool IsOfNotes { get; init; }

    /// <summary>The first date that can be read in several ways; null without one.</summary>
    public AmbiguousDate? Open { get; init; }

    /// <summary>Files of the folder that are no notes and stay where they are.</summary>
    public IReadOnlyList<string> PassedOver { get; init; } = [];

    /// <summary>The hours of all rows.</summary>
    public Minutes Time => Rows.Sum(row => row.Time);
}

/// <summary>An entry to write.</summary>
/// <param name="Name">Its file's name.</param>
/// <param name="Contents">What it holds.</param>
public sealed record NewEntryFile(string Name, ReadOnlyMemory<byte> Contents);

/// <summary>One line of what is taken in.</summary>
/// <param name="From">The file, or the line in it.</param>
/// <param name="Date">The day.</param>
/// <param name="Part">The part; empty where it is not known.</param>
/// <param name="Operation">The operation; empty where it is not known.</param>
/// <param name="Time">The hours; none where they are not known.</param>
/// <param name="Note">The beginning of the text.</param>
public sealed record ImportedRow(string From, DateOnly Date, string Part, string Operation, Minutes Time, string Note)
{
    /// <summary>What the maker has to fill in; empty where there is nothing.</summary>
    public string Missing { get; init; } = "";

    /// <summary>How many keys were read from its words.</summary>
    public int Sure { get; init; }

    /// <summary>Whether the date is no more than the time of the file.</summary>
    public bool IsDateOfFile { get; init; }
}

/// <summary>Something that could not be read.</summary>
/// <param name="File">The file.</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Reason">Why, as a sentence without its full stop.</param>
public sealed record ImportFault(string File, int Line, string Reason);
