using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Writing;

/// <summary>What became of the wish to begin a plan.</summary>
/// <param name="File">The new build.yaml, relative to the journal; null where nothing was written.</param>
/// <param name="Refusal">Why nothing was written, and what to do; null where it was.</param>
public sealed record BeginOutcome(string? File, string? Refusal);

/// <summary>
/// A plan becomes a build: a folder with the plan's name and a build.yaml with the parts and guesses word for word. The plan
/// stays as the record of what was foreseen; from then on its name means the build.
/// </summary>
public static class Beginning
{
    /// <summary>Begins a plan of a journal that was read without errors in that plan. Nothing is ever overwritten.</summary>
    /// <param name="root">The journal's folder.</param>
    /// <param name="journal">The journal as read.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="today">The day to write as <c>started</c>.</param>
    /// <exception cref="IOException">The disk does not take it.</exception>
    /// <exception cref="UnauthorizedAccessException">The journal may not be written to.</exception>
    public static BeginOutcome Of(string root, MakerJournal journal, Plan plan, DateOnly today)
    {
        var name = plan.Id.Value;
        var log = new ProblemLog();
        if (!FileNames.IsFit(name, new Place(plan.File, 1, 1), log, atTopOfSite: true))
        {
            return Refused($"{log.Problems[0].Message} A build is named after its plan's file. Rename {plan.File}.");
        }

        if (journal.BegunAs(plan) is { } build)
        {
            return Refused($"There is already a build `{name}`, in {build.Folder}. Nothing was changed.");
        }

        if (Path.Exists(Path.Combine(root, name)))
        {
            return Refused($"The journal already has something called `{name}`. Move it, or rename {plan.File}.");
        }

        if (TextFile.Read(Path.Combine(root, plan.File), plan.File, log) is not { } text)
        {
            return Refused($"{plan.File}: {log.Problems[0].Message}");
        }

        if (PlanText.AsBuild(text, today) is not { } asBuild)
        {
            return Refused($"The keys of {plan.File} are not on lines of their own, so it cannot be copied word for word. Start each key, such as `title:` and `parts:`, on a new line.");
        }

        NewFolder.Write(root, name, "build.yaml", asBuild);
        return new BeginOutcome($"{name}/build.yaml", null);
    }

    private static BeginOutcome Refused(string why) => new(null, why);
}
