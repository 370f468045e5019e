namespace ExamDocs.Core.Regimes;

/// <summary>How certain a fact of law is, by the source it was taken from; from best to worst.</summary>
public enum Confidence
{
    /// <summary>Read in the source named.</summary>
    Read,

    /// <summary>Worked out from what was read, by the rule named.</summary>
    Computed,

    /// <summary>Read only in an unofficial copy, or in a page about it.</summary>
    UnofficialCopy,

    /// <summary>The trade does so; no source.</summary>
    CommonPractice,

    /// <summary>From memory: to be read before anybody relies on it.</summary>
    FromMemory,
}
