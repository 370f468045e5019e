using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>A question about a list, with what can be answered.</summary>
/// <param name="Text">The question.</param>
/// <param name="Choices">At least two.</param>
/// <param name="Proposed">Which of them is proposed, counted from 0.</param>
public sealed record AdoptQuestion(string Text, IReadOnlyList<string> Choices, int Proposed);

/// <summary>What the user asks of a list of kit.</summary>
/// <param name="List">The list: a workbook or a file of separated values.</param>
/// <param name="OutFile">The capture workbook to write; it must not be there.</param>
/// <param name="AsOf">The day taken for what the list has as out of use without a day.</param>
public sealed record AdoptRequest(string List, string OutFile, LocalDate AsOf)
{
    /// <summary>The map to read, or to write where it is not there; null for none.</summary>
    public string? MapFile { get; init; }

    /// <summary>Answers a question with the number of a choice, counted from 0; null where there is nobody to ask.</summary>
    public Func<AdoptQuestion, int>? Ask { get; init; }

    /// <summary>The categories there are.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;
}
