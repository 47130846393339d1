using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;

namespace Journal.Bench.Common;

/// <summary>How things stand at the bench at an instant: the journal, the slate and the build that the maker is at.</summary>
internal sealed class BenchNow
{
    private readonly Lazy<(Build? Build, BuildState? State)> atHand;
    private readonly Lazy<TitleBook> titles;

    /// <summary>How things stand. What a small remark does not ask for is not reckoned.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="slate">The slate.</param>
    /// <param name="now">The instant.</param>
    public BenchNow(MakerJournal journal, Slate slate, DateTimeOffset now)
    {
        (Journal, Slate, Now) = (journal, slate, now);
        Clock = BenchClock.Of(journal);
        titles = new(() => new TitleBook(journal));
        atHand = new(AtHand);
    }

    /// <summary>The journal.</summary>
    public MakerJournal Journal { get; }

    /// <summary>The slate.</summary>
    public Slate Slate { get; }

    /// <summary>The instant.</summary>
    public DateTimeOffset Now { get; }

    /// <summary>The clock over the bench.</summary>
    public BenchClock Clock { get; }

    /// <summary>The evening.</summary>
    public DateOnly Evening => Clock.Evening(Now);

    /// <summary>Titles for ids.</summary>
    public TitleBook Titles => titles.Value;

    /// <summary>The build of the stint, else the one that the maker is at; null in a journal without any.</summary>
    public Build? Build => atHand.Value.Build;

    /// <summary>Where that build stands.</summary>
    public BuildState? State => atHand.Value.State;

    /// <summary>The remarks of the evening, in the order they were made.</summary>
    public IEnumerable<Jot> Jots => Slate.Jots.Where(jot => jot.Evening == Evening);

    private (Build? Build, BuildState? State) AtHand()
    {
        var state = Core.Figures.State.Of(Journal);
        var id = Slate.Stint is { } stint && Journal.Builds.Any(build => build.Id.Value == stint.Build) ? new Id<Build>(stint.Build) : state.Current?.Build;
        var build = Journal.Builds.FirstOrDefault(build => build.Id == id) ?? Journal.Builds.FirstOrDefault(build => build.Status == BuildStatus.Planned);
        return (build, state.Builds.FirstOrDefault(one => one.Build == build?.Id));
    }
}
