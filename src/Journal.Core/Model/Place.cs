namespace Journal.Core.Model;

/// <summary>
/// A place in one of the maker's files: line and column count from 1 in the whole file, columns in UTF-16 units,
/// the path relative to the journal with <c>/</c>.
/// </summary>
public readonly record struct Place(string File, int Line, int Column) : IComparable<Place>
{
    /// <summary>In the order of a reader: by file, then down and across.</summary>
    public int CompareTo(Place other) =>
        string.CompareOrdinal(File, other.File) is not 0 and var byFile ? byFile
        : Line != other.Line ? Line.CompareTo(other.Line)
        : Column.CompareTo(other.Column);

    /// <summary>The place as editors understand it: <c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
