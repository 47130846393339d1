using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Journal.Core.Parsing.Yaml;

/// <summary>
/// Reads YAML from the parser's events, because the library's own tree overflows the stack on deep nesting and
/// expands aliases without bound. Depth is limited, aliases are refused.
/// </summary>
internal sealed class YamlReader
{
    private const int DeepestNesting = 32;

    private readonly string text;
    private readonly string file;
    private readonly int lineOffset;
    private readonly ProblemLog log;
    private readonly Parser parser;
    private readonly Stack<Mark> open = new();
    private Mark last = Mark.Empty;
    private bool isRefused;

    private YamlReader(string text, string file, int firstLine, ProblemLog log)
    {
        // YAML 1.2.2, 5.4: these end no line any more; the parser still thinks so and would count lines that no editor shows.
        text = text.Replace('\u0085', ' ').Replace('\u2028', ' ').Replace('\u2029', ' ');
        (this.text, this.file, this.log) = (text, file, log);
        lineOffset = firstLine - 1;
        parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
    }

    /// <summary>The keys of a YAML document; null, with a problem, where it is none.</summary>
    /// <param name="text">The YAML alone.</param>
    /// <param name="file">The file it stands in.</param>
    /// <param name="firstLine">The line of the file that the text begins on, from 1.</param>
    /// <param name="log">Where problems go.</param>
    public static MapNode? Read(string text, string file, int firstLine, ProblemLog log)
    {
        var node = ReadNode(text, file, firstLine, log);
        switch (node)
        {
            case null or MapNode:
                return (MapNode?)node;
            case { IsBlank: true }:
                return new MapNode(node.Place, []);
            default:
                log.Add(ProblemTable.NotKeys, node.Place);
                return null;
        }
    }

    /// <summary>The items of a YAML document that is a list; null, with a problem, where it is none.</summary>
    public static ListNode? ReadList(string text, string file, ProblemLog log)
    {
        var node = ReadNode(text, file, 1, log);
        switch (node)
        {
            case null or ListNode:
                return (ListNode?)node;
            case { IsBlank: true }:
                return new ListNode(node.Place, []);
            default:
                log.Add(ProblemTable.NotAList, node.Place);
                return null;
        }
    }

    /// <summary>Whatever a YAML document holds; null, with a problem, where it cannot be read.</summary>
    public static Node? ReadAny(string text, ProblemLog log) => ReadNode(text, "", 1, log);

    private static Node? ReadNode(string text, string file, int firstLine, ProblemLog log)
    {
        var reader = new YamlReader(text, file, firstLine, log);
        try
        {
            return reader.ReadDocument();
        }
        catch (YamlException e) when (reader.IsBracketOpen(e))
        {
            log.Add(ProblemTable.NotYaml, reader.PlaceOf(reader.open.Peek()), YamlFault.NotClosed);
        }
        catch (YamlException e)
        {
            // A tab is met at the end of what was read, all else at its beginning.
            var isTab = e.Message.Contains("a tab character", StringComparison.Ordinal);
            var (place, what) = reader.TabNear(e) is { } tab ? (tab, YamlFault.Tab) : (reader.PlaceOf(isTab ? e.End : e.Start), YamlFault.InPlainWords(e.Message));
            log.Add(ProblemTable.NotYaml, place, what);
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            // The scanner reports a bracket that is not closed in this way, without a position.
            // What was refused is told already.
            if (!reader.isRefused)
            {
                log.Add(ProblemTable.NotYaml, reader.PlaceOf(reader.open.TryPeek(out var opened) ? opened : reader.last), YamlFault.NotClosed);
            }
        }

        return null;
    }

    // The parser stumbles a line before or after a tab that indents, or says only where the keys begin that it could not finish: the
    // line with the tab is what the maker has to mend.
    private Place? TabNear(YamlException e)
    {
        var lines = text.Split('\n');
        var last = e.Message.Contains("expected", StringComparison.Ordinal) ? lines.Length : Math.Min(lines.Length, (int)e.End.Line + 1);
        for (var line = Math.Max(1, (int)e.Start.Line - 1); line <= last; line++)
        {
            var indent = lines[line - 1].AsSpan()[..^lines[line - 1].AsSpan().TrimStart(" \t").Length];
            if (indent.IndexOf('\t') is >= 0 and var at && indent.Length < lines[line - 1].TrimEnd('\r').Length)
            {
                return new Place(file, lineOffset + line, at + 1);
            }
        }

        return null;
    }

    private bool IsBracketOpen(YamlException e) => open.TryPeek(out var opened) && (int)opened.Index < text.Length && text[(int)opened.Index] is '[' or '{'
        && (YamlFault.IsNotClosed(e.Message) || e.Start.Index >= text.AsSpan().TrimEnd().Length);

    private Node? ReadDocument()
    {
        Next<StreamStart>();
        if (!MoveNext() || parser.Current is not DocumentStart)
        {
            return new TextNode(new Place(file, lineOffset + 1, 1), "", IsQuoted: false);
        }

        MoveNext();
        var node = ReadNode(0);
        Next<DocumentEnd>();
        if (MoveNext() && parser.Current is DocumentStart second)
        {
            log.Add(ProblemTable.YamlSecondDocument, PlaceOf(second.Start));
            return null;
        }

        return node;
    }

    // On entry the parser stands on the node's first event, on return on its last.
    private Node ReadNode(int depth)
    {
        if (depth > DeepestNesting)
        {
            Refuse(ProblemTable.YamlTooDeep, parser.Current!.Start, DeepestNesting);
        }

        switch (parser.Current)
        {
            case Scalar scalar:
                return ReadText(scalar);
            case SequenceStart list:
                return ReadList(list, depth);
            case MappingStart map:
                return ReadMap(map, depth);
            case AnchorAlias alias:
                Refuse(ProblemTable.YamlAlias, alias.Start, alias.Value.Value);
                break;
        }

        throw new InvalidOperationException("A node was expected.");
    }

    private TextNode ReadText(Scalar scalar)
    {
        if (scalar.Style == ScalarStyle.Plain && LostAsComment(scalar.End) is { } lost)
        {
            // Where all is lost there is no value to point at but the lost one.
            var place = PlaceOf(scalar.Start);
            log.Add(ProblemTable.CutShort, scalar.Value.Length > 0 ? place : place with { Column = place.Column + lost.After }, lost.Text);
        }

        var isQuoted = scalar.Style is not ScalarStyle.Plain;
        var begin = Math.Min(text.Length, (int)scalar.Start.Index + (isQuoted ? 1 : 0));
        return new TextNode(PlaceOf(scalar.Start), scalar.Value, isQuoted) { IsVerbatim = text.AsSpan(begin).StartsWith(scalar.Value, StringComparison.Ordinal) };
    }

    private ListNode ReadList(SequenceStart start, int depth)
    {
        var nodes = new List<Node>();
        open.Push(start.Start);
        for (MoveNext(); parser.Current is not SequenceEnd; MoveNext())
        {
            nodes.Add(ReadNode(depth + 1));
        }

        open.Pop();
        return new ListNode(PlaceOf(start.Start), nodes);
    }

    private MapNode ReadMap(MappingStart start, int depth)
    {
        var pairs = new List<KeyValuePair<TextNode, Node>>();
        open.Push(start.Start);
        for (MoveNext(); parser.Current is not MappingEnd; MoveNext())
        {
            var key = ReadNode(depth + 1) as TextNode;
            if (key is null)
            {
                Refuse(ProblemTable.NotKeys, start.Start);
            }

            MoveNext();
            pairs.Add(new(key, ReadNode(depth + 1)));
        }

        open.Pop();
        return new MapNode(PlaceOf(start.Start), pairs);
    }

    // `tap #10-32` loses its end without a word; `2h45  # a remark` is meant as a comment.
    private (string Text, int After)? LostAsComment(Mark end)
    {
        var start = (int)Math.Min(end.Index, text.Length);
        var at = start;
        while (at < text.Length && text[at] is ' ' or '\t')
        {
            at++;
        }

        if (at + 1 >= text.Length || text[at] != '#' || at == 0 || text[at - 1] is not (' ' or '\t') || char.IsWhiteSpace(text[at + 1]) || text[at + 1] == '#')
        {
            return null;
        }

        var stop = text.AsSpan(at).IndexOfAny("\r\n \t");
        return (stop < 0 ? text[at..] : text[at..(at + stop)], at - start);
    }

    private void Next<T>()
        where T : ParsingEvent
    {
        if (!MoveNext() || parser.Current is not T)
        {
            throw new InvalidOperationException("Another event was expected.");
        }
    }

    private bool MoveNext()
    {
        var moved = parser.MoveNext();
        if (!moved || parser.Current is null)
        {
            return false;
        }

        last = parser.Current.End;
        return true;
    }

    [DoesNotReturn]
    private void Refuse(ProblemKind kind, Mark mark, params object[] details)
    {
        log.Add(kind, PlaceOf(mark), details);
        isRefused = true;
        throw new InvalidOperationException(kind.Code);
    }

    // Behind the end the parser counts on: `---` and no more gives it a second line.
    private Place PlaceOf(Mark mark) => mark.Index < text.Length
        ? new(file, (int)mark.Line + lineOffset, (int)mark.Column)
        : new LineStarts(text, file, lineOffset + 1).At(text.Length);
}
