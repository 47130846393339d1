using Journal.Cli.Output;
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

    /// <summary>A line of text that is known already, and why; <c>none</c> where it is not so.</summary>
    public string? Known(string question, string offered, string? because) =>
        Line(because is null ? $"{question} (`none`: not so)" : $"{question} ({because}; `none`: not so)", offered) is { } line && line != "none" ? line : null;

    /// <summary>Yes or no.</summary>
    public bool YesOrNo(string question, bool offered) => Ask(question, offered ? "yes" : "no", line => line.ToLowerInvariant() switch
    {
        "yes" or "y" => (true, null),
        "no" or "n" => (false, null),
        _ => (false, "Say `yes` or `no`."),
    });

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

    /// <summary>The same where nothing need be said; null then.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="read">What a line means, or what is wrong with it.</param>
    /// <param name="offered">What Enter accepts, and <c>none</c> refuses; null where Enter says nothing.</param>
    public string? Maybe(string question, Func<string, (string? Value, string? Wrong)> read, string? offered = null)
    {
        while (Line(question, offered) is { } line && (offered is null || line != "none"))
        {
            var (value, wrong) = read(line);
            if (wrong is null)
            {
                return value;
            }

            terminal.Complain(wrong);
        }

        return null;
    }

    /// <summary>One of several words; null where there is nothing to choose from.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="offered">What Enter accepts; null where something must be said.</param>
    /// <param name="choices">The words.</param>
    public string? Choose(string question, string? offered, Choices choices)
    {
        List(choices);
        return offered is null && choices.Known.Count == 0 ? null : Ask(question, offered, choices.Meant);
    }

    /// <summary>One or several of them, parted by commas.</summary>
    public IReadOnlyList<string> ChooseSome(string question, string? offered, Choices choices)
    {
        List(choices);
        return Ask(question, offered, choices.AllMeant);
    }

    /// <summary>One of several words, or none: Enter says nothing, or what is offered.</summary>
    public string? MaybeChoose(string question, Choices choices, string? offered = null)
    {
        List(choices);
        return Maybe(question, choices.Meant, offered);
    }

    private void List(Choices choices)
    {
        if (choices.Listed.Count > 1)
        {
            terminal.Complain($"  {string.Join("  ", choices.Listed.Select((word, i) => $"{i + 1} {word}"))}");
        }
    }
}
