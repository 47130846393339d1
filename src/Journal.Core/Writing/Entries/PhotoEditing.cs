using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>Another value of a picture in an entry's list.</summary>
/// <param name="File">The picture's file, from the build's folder.</param>
/// <param name="Key">The key.</param>
/// <param name="Yaml">Its value as YAML; null to take the key out.</param>
public sealed record PhotoValue(string File, string Key, string? Yaml)
{
    /// <summary>What it shows; null or empty for nothing said.</summary>
    public static PhotoValue Caption(string file, string? words) => Words(file, "caption", words);

    /// <summary>What it shows, for those who cannot see it; null or empty for nothing said.</summary>
    public static PhotoValue Alt(string file, string? words) => Words(file, "alt", words);

    /// <summary>Whether it is never published.</summary>
    public static PhotoValue Never(string file, bool isNever) => new(file, "publish", isNever ? "never" : null);

    /// <summary>Its balloons, in the order of their numbers.</summary>
    public static PhotoValue Marks(string file, IReadOnlyList<PhotoMark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        return new(file, "marks", marks.Count == 0 ? null : ToYaml(marks));
    }

    /// <summary>Balloons on one line.</summary>
    internal static string ToYaml(IReadOnlyList<PhotoMark> marks) =>
        YamlText.List(marks.Select(mark => YamlText.Map(("at", YamlText.List([Number(mark.Across), Number(mark.Down)])), ("text", YamlText.Of(mark.Text)))));

    private static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static PhotoValue Words(string file, string key, string? words) => new(file, key, string.IsNullOrWhiteSpace(words) ? null : YamlText.Of(words.Trim()));
}

/// <summary>Changes the pictures of entries that stand already: one value, their order, or the entry; all else stays to the byte.</summary>
/// <param name="folder">The journal's folder.</param>
public sealed class PhotoEditing(string folder)
{
    /// <summary>
    /// Changes pictures of an entry in one step, or nothing. For those who hold the slate: no other command writes meanwhile. The
    /// file is read anew, so what was changed in it since the journal was read stays.
    /// </summary>
    /// <param name="entry">The entry's file, relative to the journal.</param>
    /// <param name="values">Other values.</param>
    /// <param name="order">The pictures' files in their new order; null to leave it.</param>
    public Written Change(string entry, IReadOnlyList<PhotoValue> values, IReadOnlyList<string>? order = null) => Edit(entry, text =>
    {
        var changed = order is null ? Added.As(text) : ListEdit.OfPhotos(text)?.Order(order) ?? Added.As(text);
        foreach (var value in values)
        {
            changed = changed.Text is { } so ? Set(so, value) : changed;
        }

        return changed;
    });

    /// <summary>
    /// Puts a picture into another entry's list, then takes it out of its own; ended in between, it is in both. The other entry is of
    /// the same build.
    /// </summary>
    /// <param name="from">The entry's file.</param>
    /// <param name="to">The other entry's file.</param>
    /// <param name="photo">The picture, its file from the build's folder.</param>
    public Written Move(string from, string to, Photo photo)
    {
        ArgumentNullException.ThrowIfNull(photo);
        var line = YamlText.Map(
            ("file", YamlText.Of(photo.File)),
            ("caption", Words(photo.Caption)),
            ("alt", Words(photo.Alt)),
            ("marks", photo.Marks.Count == 0 ? null : PhotoValue.ToYaml(photo.Marks)),
            ("publish", photo.Publish.IsNever ? "never" : photo.Publish.FirstSeenAfter(DateOnly.MinValue) is { } seen ? $"after {seen.AddDays(-1).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : null));

        // Where it cannot be taken out, it is put nowhere.
        var isThere = Edit(from, text => Without(text, photo) is { Text: null } refused ? refused : Added.As(text));
        return isThere.File is null ? isThere
            : Edit(to, text => new EntryText(text).Items("photos", [line])) is { File: null } refused ? refused
            : Edit(from, text => Without(text, photo));
    }

    // One that stands in the text alone has no keys yet, and is listed for them.
    private static Added Set(string text, PhotoValue value) =>
        ListEdit.OfPhotos(text)?.Set(value.File, value.Key, value.Yaml)
        ?? (value.Yaml is null ? Added.As(text) : new EntryText(text).Items("photos", [YamlText.Map(("file", YamlText.Of(value.File)), (value.Key, value.Yaml))]));

    private static Added Without(string text, Photo photo) => ListEdit.OfPhotos(text)?.Remove(photo.File) ?? Added.Refused($"`{photo.File}` is not in its list of pictures.");

    private static string? Words(string? words) => words is null ? null : YamlText.Of(words);

    private Written Edit(string entry, Func<string, Added> change) => MakersFile.Edit(Path.Combine(folder, entry.Replace('/', Path.DirectorySeparatorChar)), change) switch
    {
        null => new Written(null, $"{entry} cannot be read."),
        { Text: null } refused => new Written(null, $"{entry}: {refused.WhyNot}"),
        _ => new Written(entry, ""),
    };
}
