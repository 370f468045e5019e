namespace ExamDocs.UseCases.Issuing;

/// <summary>Whom documents are sent to.</summary>
public enum SendTo
{
    /// <summary>The employer of the visit: reports, notices and certificates.</summary>
    Employer,

    /// <summary>The owner that kit is hired from: the same.</summary>
    Owner,

    /// <summary>The enforcing authority: the copies of reports that are owed to it.</summary>
    Authority,
}
