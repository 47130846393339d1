using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>Says what a picture of an entry shows.</summary>
internal static class PhotoCaption
{
    /// <summary>The caption beside its picture in the list, or the picture added to the list with it.</summary>
    /// <param name="keys">The keys of the entry.</param>
    /// <param name="photo">The picture, its file from the build's folder.</param>
    public static Added Add(Addition keys, NewPhoto photo) =>
        keys.KeyOfItem("photos", written => Is(photo.File, written), "file", "caption", YamlText.Of(photo.Caption!)) ?? keys.Items("photos", [photo.ToYaml()]);

    // An entry in a folder of its own may name it from there.
    private static bool Is(string file, string written) => file == written || file.EndsWith($"/{written}", StringComparison.Ordinal);
}
