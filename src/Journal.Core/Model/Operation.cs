namespace Journal.Core.Model;

/// <summary>What the time of an operation went into.</summary>
public enum TimeKind
{
    /// <summary>Making chips.</summary>
    Cutting,

    /// <summary>Holding, indicating, marking out.</summary>
    SettingUp,

    /// <summary>Making what the job needs.</summary>
    FixturesAndTools,

    /// <summary>Finding out what size it is.</summary>
    Measuring,

    /// <summary>Making parts go together and run.</summary>
    Fitting,

    /// <summary>Making it look and last.</summary>
    Finishing,

    /// <summary>Mending mistakes.</summary>
    PuttingRight,

    /// <summary>Drawing and planning.</summary>
    Thinking,

    /// <summary>Keeping the shop.</summary>
    Shop,
}

/// <summary>What the hands did, and the kind of time it stands for.</summary>
public sealed record Operation(Id<Operation> Id, string Title, TimeKind Kind)
{
    /// <summary>Ids that it had before; their addresses on the site lead to it still.</summary>
    public IReadOnlyList<string> Formerly { get; init; } = [];
}
