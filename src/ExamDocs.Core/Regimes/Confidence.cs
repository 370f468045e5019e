namespace ExamDocs.Core.Regimes;

/// <summary>How surely a fact of law is known: what its source was when it was written down here, from best to worst.</summary>
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
