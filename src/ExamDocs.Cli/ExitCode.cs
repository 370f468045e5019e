namespace ExamDocs.Cli;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>All done; a clean withdrawal is a result, not a failure.</summary>
    public const int Done = 0;

    /// <summary>At least one finding of severity error; the rest is done.</summary>
    public const int Findings = 1;

    /// <summary>An input is unreadable or the command is wrong; nothing was issued.</summary>
    public const int Refused = 2;

    /// <summary>Browser, disk or register failed; what was issued is whole, run again to go on.</summary>
    public const int Stopped = 3;

    /// <summary>Of a document it could not be told whether it is genuine and current; nothing speaks against it.</summary>
    public const int CannotTell = 4;
}
