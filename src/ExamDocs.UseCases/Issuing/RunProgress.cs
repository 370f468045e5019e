using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases.Issuing;

/// <summary>What a run is doing.</summary>
public enum RunStage
{
    Reading,
    Checking,
    Gathering,
    Printing,
    Writing,
}

/// <summary>How far a run is.</summary>
/// <param name="Stage">What it is doing.</param>
/// <param name="Done">Documents or parts done in this stage.</param>
/// <param name="Of">Of how many; 0 where this stage does not count.</param>
/// <param name="Refused">Refusals so far.</param>
public sealed record RunProgress(RunStage Stage, int Done, int Of, int Refused)
{
    /// <summary>In words, for example "printing: 40 of 500".</summary>
    public Message Said =>
        (Of, Refused) switch
        {
            (0, _) => StageIs(Stage),
            (_, 0) => $"{StageIs(Stage)}: {Done} of {Of}",
            _ => $"{StageIs(Stage)}: {Done} of {Of}, {Refused} refused",
        };

    /// <summary>A stage in words.</summary>
    public static Message StageIs(RunStage stage) =>
        stage switch
        {
            RunStage.Reading => $"reading",
            RunStage.Checking => $"checking",
            RunStage.Gathering => $"gathering",
            RunStage.Printing => $"printing",
            _ => $"writing",
        };
}
