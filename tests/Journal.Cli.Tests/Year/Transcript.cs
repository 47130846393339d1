using System.Globalization;
using System.Text;

namespace Journal.Cli.Tests.Year;

/// <summary>
/// Plays a transcript: what a maker types, evening by evening, and what the program must answer. A line begins with
/// <c>@</c> (the clock in Universal Time), <c>$</c> (a command), <c>&gt;</c> (an answer to a question; without any it is asked as a
/// script), <c>|</c> (a line, or the beginning of one, that must be told, in this order), <c>x</c> (words that must not be told),
/// <c>=</c> (the exit status, 0 where left out), <c>+ file</c> (a file that the maker writes, its lines indented by four), or
/// <c>? file: words</c> (words that the file must hold). All other lines are told to the reader alone.
/// </summary>
internal sealed class Transcript(string folder, IReadOnlyList<string> lines)
{
    private DateTimeOffset now;

    /// <summary>What went otherwise than written, each with its line; nothing where all went well.</summary>
    public IReadOnlyList<string> Play()
    {
        var faults = new List<string>();
        for (var at = 0; at < lines.Count; at++)
        {
            var line = lines[at];
            if (Marked(line, '@') is { } clock)
            {
                now = DateTimeOffset.Parse(clock + "Z", CultureInfo.InvariantCulture);
            }
            else if (Marked(line, '+') is { } file)
            {
                Write(file, lines.Skip(at + 1).TakeWhile(text => text.StartsWith("    ", StringComparison.Ordinal)).Select(text => text[4..]));
            }
            else if (Marked(line, '?') is { } held && held.IndexOf(": ", StringComparison.Ordinal) is > 0 and var colon)
            {
                if (!Read(held[..colon]).Contains(held[(colon + 2)..], StringComparison.Ordinal))
                {
                    faults.Add($"Line {at + 1}: not in the file: {held}\nwhich holds:\n{Read(held[..colon])}");
                }
            }
            else if (Marked(line, '$') is { } command)
            {
                faults.AddRange(Ask(command, at, [.. lines.Skip(at + 1).TakeWhile(text => text.Length > 0 && text[0] is '>' or '|' or 'x' or '=' && (text.Length == 1 || text[1] == ' '))]));
            }
        }

        return faults;
    }

    private IEnumerable<string> Ask(string command, int at, IReadOnlyList<string> below)
    {
        var answers = below.Select(line => Marked(line, '>')).OfType<string>().ToList();
        var answer = Answer.To(
            folder,
            terminal => terminal with { Now = now, Today = DateOnly.FromDateTime(now.UtcDateTime), CanAsk = answers.Count > 0, In = new StringReader(string.Concat(answers.Select(said => said + "\n"))) },
            [.. Words(command).Skip(1)]);
        var told = string.Join(' ', (answer.Error + answer.Out).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var from = 0;
        foreach (var line in below)
        {
            if (Marked(line, '|') is { } wanted)
            {
                var found = told.IndexOf(wanted, from, StringComparison.Ordinal);
                if (found < 0)
                {
                    yield return $"Line {at + 1}, {command}: not told: {wanted}\nbut:\n{answer.Error}{answer.Out}";
                }

                from = Math.Max(from, found);
            }
            else if (Marked(line, 'x') is { } unwanted && told.Contains(unwanted, StringComparison.Ordinal))
            {
                yield return $"Line {at + 1}, {command}: told, and should not be: {unwanted}";
            }
        }

        var status = int.Parse(below.Select(line => Marked(line, '=')).OfType<string>().FirstOrDefault() ?? "0", CultureInfo.InvariantCulture);
        if (answer.Status != status)
        {
            yield return $"Line {at + 1}, {command}: status {answer.Status}, not {status}:\n{answer.Error}{answer.Out}";
        }
    }

    private static string? Marked(string line, char mark) => line.Length >= 1 && line[0] == mark && (line.Length == 1 || line[1] == ' ') ? line[1..].Trim() : null;

    // As a shell parts them, with double quotes alone.
    private static IEnumerable<string> Words(string command)
    {
        var (word, isQuoted, isAny) = (new StringBuilder(), false, false);
        foreach (var letter in command + " ")
        {
            if (letter == '"')
            {
                (isQuoted, isAny) = (!isQuoted, true);
            }
            else if (letter == ' ' && !isQuoted)
            {
                if (isAny)
                {
                    yield return word.ToString();
                }

                (word, isAny) = (new StringBuilder(), false);
            }
            else
            {
                word.Append(letter);
                isAny = true;
            }
        }
    }

    private void Write(string file, IEnumerable<string> text)
    {
        var path = Path.Combine(folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, string.Concat(text.Select(line => line + "\n")));
    }

    private string Read(string file) => File.Exists(Path.Combine(folder, file)) ? File.ReadAllText(Path.Combine(folder, file)).Replace('\u202F', ' ') : "(there is no such file)";
}
