using Journal.Core.Writing.Bench;

namespace Journal.Core.Writing.Pictures;

/// <summary>A picture and when it was taken.</summary>
/// <param name="Path">Where it lies on disk.</param>
/// <param name="Taken">What the clock over the bench showed.</param>
/// <param name="IsFileTime">Whether that is only the time of the file, because the picture itself does not say.</param>
public sealed record TakenPicture(string Path, DateTime Taken, bool IsFileTime)
{
    /// <summary>What the picture itself says that it shows; null where it says nothing.</summary>
    public string? Caption { get; init; }

    /// <summary>What is wrong with it, in half a sentence; null where nothing is.</summary>
    public string? Fault { get; init; }

    /// <summary>The evening that it belongs to.</summary>
    public DateOnly Evening => BenchClock.Evening(Taken);
}

/// <summary>What becomes of a picture.</summary>
public enum Fate
{
    /// <summary>It goes to an evening's entry.</summary>
    Added,

    /// <summary>The journal has it already.</summary>
    AlreadyThere,

    /// <summary>There is no entry for its evening.</summary>
    NoEntry,

    /// <summary>It cannot be read, or its entry is written in a way that nothing can be added to.</summary>
    Refused,
}

/// <summary>A picture and what becomes of it.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Fate">What becomes of it.</param>
/// <param name="Entry">The entry's file from the journal's folder; null without one.</param>
/// <param name="As">The picture's file in the build's folder; null where it is not added.</param>
/// <param name="Why">Why it is refused; empty otherwise.</param>
public sealed record Gathered(TakenPicture Picture, Fate Fate, string? Entry, string? As, string Why);
