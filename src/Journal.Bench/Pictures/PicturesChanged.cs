using Journal.Bench.Slates;
using Journal.Core.Model;
using Journal.Core.Writing.Entries;

namespace Journal.Bench.Pictures;

/// <summary>Pictures of an entry are changed: what was changed on the page, and nothing else.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent.</param>
/// <param name="Entry">The entry's file.</param>
/// <param name="Values">Other values.</param>
/// <param name="Order">The files in their new order; null to leave it.</param>
internal sealed record PicturesChanged(string Id, DateTimeOffset At, string Entry, IReadOnlyList<PhotoValue> Values, IReadOnlyList<string>? Order) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands) => Values.Count == 0 && Order is null ? "Saved." : Told(hands.With(_ => new PhotoEditing(hands.Folder).Change(Entry, Values, Order)));

    /// <summary>What is said of something written.</summary>
    /// <exception cref="RefusedException">Nothing was.</exception>
    internal static string Told(Written written) => written.File is null ? throw new RefusedException(written.WhyNot) : "Saved.";
}

/// <summary>A picture goes into another entry.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent.</param>
/// <param name="From">The entry's file.</param>
/// <param name="To">The other entry's file.</param>
/// <param name="Photo">The picture, its file from the build's folder.</param>
internal sealed record PictureMoved(string Id, DateTimeOffset At, string From, string To, Photo Photo) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands) => PicturesChanged.Told(hands.With(_ => new PhotoEditing(hands.Folder).Move(From, To, Photo)));
}
