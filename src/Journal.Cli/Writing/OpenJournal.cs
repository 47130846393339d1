using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Checking;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Writing;

/// <summary>A journal that a command is about to write to.</summary>
/// <param name="Folder">Its folder.</param>
/// <param name="Journal">What stands in it.</param>
/// <param name="Clock">The clock over its bench.</param>
internal sealed record OpenJournal(string Folder, MakerJournal Journal, BenchClock Clock)
{
    /// <summary>Each build.yaml that cannot be read; where there is one, it is unclear which build is under way.</summary>
    public IReadOnlyList<string> LostBuilds { get; init; } = [];

    /// <summary>Finds and reads the journal, then does something with it; where there is none, says why.</summary>
    /// <param name="named">The folder that the maker named; null where none was.</param>
    /// <param name="terminal">Whom to tell.</param>
    /// <param name="work">What to do; gives the exit status.</param>
    /// <returns>The exit status.</returns>
    public static int With(string? named, Terminal terminal, Func<OpenJournal, int> work)
    {
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        var reading = JournalReader.Read(folder, DateOnly.MaxValue);
        if (reading.Journal is not { } journal)
        {
            terminal.Complain("journal.yaml cannot be read. See `journal check`.");
            return ExitStatus.Flawed;
        }

        terminal.IfStopped(() => "No file is half-written; `journal check` shows whether all is in order.");
        try
        {
            return work(new OpenJournal(folder, journal, BenchClock.Of(journal)) { LostBuilds = LostIn(reading, journal) });
        }
        catch (UsageException e)
        {
            terminal.Complain(e.Message);
            return ExitStatus.WrongUse;
        }
        catch (OperationCanceledException)
        {
            terminal.Complain("");
            terminal.Complain("Stopped; nothing was written.");
            return ExitStatus.NotFinished;
        }
    }

    /// <summary>The build that is named, else the one under way, else the only one that may be begun.</summary>
    /// <exception cref="UsageException">There is none, or none of that name, or it cannot be told which.</exception>
    public Build Build(string? named)
    {
        if (named is not null)
        {
            return Journal.Builds.FirstOrDefault(build => build.Id.Value == named)
                ?? throw new UsageException($"There is no build `{named}`. {Suggestion.For(named, [.. Journal.Builds.Select(build => build.Id.Value)], "builds")}");
        }

        if (LostBuilds.Count > 0)
        {
            throw new UsageException($"{LostBuilds[0]} cannot be read, so it is unclear which build is under way. See `journal check`, or choose a build with `--build`.");
        }

        var current = State.Of(Journal).Current?.Build;
        return Journal.Builds.FirstOrDefault(build => build.Id == current)
            ?? (Journal.Builds.Where(build => build.Status == BuildStatus.Planned).ToList() is [var only] ? only : throw new UsageException(WhyNoBuild()));
    }

    /// <summary>
    /// The build that is named, else the one under way. With several under way it is asked which, the last worked on offered; in a
    /// script that one is taken, and it is said so.
    /// </summary>
    /// <exception cref="UsageException">There is none, or none of that name, or it cannot be told which.</exception>
    public Build BuildFor(string? named, Terminal terminal)
    {
        var build = Build(named);
        var others = named is null ? State.Of(Journal).UnderWay.Select(one => one.Build).Where(one => one != build.Id).ToList() : [];
        if (others.Count == 0)
        {
            return build;
        }

        if (terminal.CanAsk)
        {
            IReadOnlyList<string> listed = [build.Id.Value, .. others.Select(other => other.Value)];
            return Build(new Questions(terminal).Choose("Build", build.Id.Value, new Choices("builds under way", listed, listed, word => Journal.Builds.FirstOrDefault(one => one.Id.Value == word)?.Id.Value)));
        }

        terminal.Complain($"Taken for {build.Title}, the last worked on of the builds under way. For another say `--build {string.Join("` or `--build ", others)}`.");
        return build;
    }

    private string WhyNoBuild() => Journal.Builds.Count == 0
        ? "No builds yet. Add one with `journal add build <id>`."
        : $"No build is under way. Choose one with `--build`: {string.Join(", ", Journal.Builds.Select(build => build.Id.Value))}; or add one with `journal add build <id>`.";

    private static IReadOnlyList<string> LostIn(JournalReading reading, MakerJournal journal)
    {
        var read = journal.Builds.Select(build => $"{build.Folder}/build.yaml").ToHashSet(StringComparer.Ordinal);
        return [.. reading.Problems.Select(problem => problem.Place.File).Where(file => file.EndsWith("/build.yaml", StringComparison.Ordinal) && !read.Contains(file)).Distinct()];
    }

    /// <summary>A part of a build by the word for it; null for null.</summary>
    /// <exception cref="UsageException">The build has no such part.</exception>
    public static string? Part(Build build, string? word) =>
        word is null or "whole" || build.HasPart(new(word)) ? word
            : throw new UsageException($"{build.Title} has no part `{word}`. {Suggestion.For(word, [.. build.Parts.Select(part => part.Id.Value), "whole"], "parts")}");

    /// <summary>Operations by words for them, each once.</summary>
    /// <exception cref="UsageException">There is no such operation.</exception>
    public IReadOnlyList<string> Operations(IReadOnlyList<string> words) => [.. words.Select(Operation).OfType<string>().Distinct()];

    /// <summary>An operation by one of the words for it; null for null.</summary>
    /// <exception cref="UsageException">There is no such operation.</exception>
    public string? Operation(string? word) =>
        word is null ? null
            : Journal.Vocabulary.Operations.TryFind(word, out var id) ? id.Value
            : throw new UsageException($"There is no operation `{word}`. {Suggestion.For(word, Journal.Vocabulary.Operations.Spellings, "operations")}");
}

/// <summary>The maker asked for something that cannot be done; the message says why, and what to write instead. The exit status is 2.</summary>
internal sealed class UsageException : Exception
{
    /// <summary>A refusal without words.</summary>
    public UsageException()
    {
    }

    /// <inheritdoc/>
    public UsageException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public UsageException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
