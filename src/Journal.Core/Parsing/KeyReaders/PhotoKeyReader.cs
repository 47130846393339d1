using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads the pictures that an entry lists.</summary>
internal sealed class PhotoKeyReader(FileScope scope)
{
    /// <summary>The pictures listed under <c>photos</c>, each with the place of its file name. Whether the files exist is checked later.</summary>
    public IReadOnlyList<(Photo Photo, Place Place)> ReadAll(Fields fields)
    {
        var photos = new List<(Photo, Place)>();
        foreach (var node in fields.Items("photos"))
        {
            if (node is TextNode)
            {
                photos.Add((new Photo { File = fields.TextOf(node, "photos")! }, node.Place));
            }
            else if (fields.Map(node, Keys.Photo) is { } photo && photo.Wants("file", "Give the picture's file: `file: photos/….jpg`.") && photo.Text("file") is { } file)
            {
                photos.Add((Read(photo, file), photo["file"]!.Place));
            }
        }

        return photos;
    }

    private Photo Read(Fields fields, string file) => new()
    {
        File = file,
        Caption = fields.Text("caption"),
        Alt = fields.Text("alt"),
        Marks = [.. fields.Maps("marks", Keys.Mark).Select(Mark).OfType<PhotoMark>()],
        Publish = fields.Publication("publish"),
    };

    private PhotoMark? Mark(Fields fields)
    {
        if (fields.Items("at") is [TextNode across, TextNode down] && PerCent(across.Text) is { } x && PerCent(down.Text) is { } y && fields.Text("text") is { } text)
        {
            return new PhotoMark(x, y, text);
        }

        scope.Log.Add(ProblemTable.NotAMark, fields.Place);
        return null;
    }

    private static decimal? PerCent(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value <= 100 ? value : null;
}
