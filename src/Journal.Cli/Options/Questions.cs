using Journal.Cli.Output;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;

namespace Journal.Cli.Options;

/// <summary>Asks on the terminal, what is known first; Enter accepts it. Questions go to standard error.</summary>
/// <param name="terminal">Where someone answers.</param>
internal sealed class Questions(Terminal terminal)
{
    /// <summary>A line of text; null where nothing was said.</summary>
    /// <exception cref="OperationCanceledException">The maker ended the input.</exception>
    public string? Line(string question, string? offered = null)
    {
        while (true)
        {
            terminal.Error.Write(Printable.Of(offered is null ? $"{question}: " : $"{question} [{offered}]: "));
            terminal.Error.Flush();
            var answer = terminal.In.ReadLine() ?? throw new OperationCanceledException();
            if (ForeignBytes.In(answer) is not { } wrong)
            {
                return string.IsNullOrWhiteSpace(answer) ? offered : answer.Trim();
            }

            terminal.Complain(wrong);
        }
    }

    /// <summary>A line that must mean something; asks again until it does.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="offered">What Enter accepts; null where something must be said.</param>
    /// <param name="read">What a line means, or what is wrong with it.</param>
    public T Ask<T>(string question, string? offered, Func<string, (T Value, string? Wrong)> read)
    {
        while (true)
        {
            if (Line(question, offered) is not { } line)
            {
                continue;
            }

            var (value, wrong) = read(line);
            if (wrong is null)
            {
                return value;
            }

            terminal.Complain(wrong);
        }
    }

    /// <summary>One of several words, by its number in the list or by name.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="offered">What Enter accepts.</param>
    /// <param name="listed">The words shown with numbers; empty where there are too many to show.</param>
    /// <param name="whatTheyAre">What the words name.</param>
    /// <param name="find">The word that is meant by another spelling; null where there is none.</param>
    /// <param name="known">All words, for “did you mean”.</param>
    public string? Choose(string question, string? offered, IReadOnlyList<string> listed, string whatTheyAre, Func<string, string?> find, IReadOnlyCollection<string> known)
    {
        if (listed.Count > 1)
        {
            terminal.Complain($"  {string.Join("  ", listed.Select((word, i) => $"{i + 1} {word}"))}");
        }

        if (offered is null && known.Count == 0)
        {
            return null;
        }

        return Ask<string?>(question, offered, line =>
            int.TryParse(line, out var number) && number >= 1 && number <= listed.Count ? (listed[number - 1], null)
            : find(line) is { } word ? (word, null)
            : (null, $"There is no `{line}`. {Suggestion.For(line, known, whatTheyAre)}"));
    }
}
