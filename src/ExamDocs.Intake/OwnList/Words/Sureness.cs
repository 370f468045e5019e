namespace ExamDocs.Intake.OwnList.Words;

/// <summary>How sure a proposal is.</summary>
public enum Sureness
{
    /// <summary>A guess: it counts only once somebody has confirmed it.</summary>
    No,

    /// <summary>Likely: it is asked where somebody can be asked.</summary>
    Likely,

    /// <summary>Not asked.</summary>
    Yes,
}
