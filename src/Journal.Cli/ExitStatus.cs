namespace Journal.Cli;

/// <summary>The exit status of every command; scripts rely on it.</summary>
internal static class ExitStatus
{
    /// <summary>All is well.</summary>
    public const int Well = 0;

    /// <summary>The journal has errors or omissions.</summary>
    public const int Flawed = 1;

    /// <summary>The program was not asked in a way that it understands.</summary>
    public const int WrongUse = 2;

    /// <summary>Disk, lock or network kept it from finishing.</summary>
    public const int NotFinished = 3;
}
