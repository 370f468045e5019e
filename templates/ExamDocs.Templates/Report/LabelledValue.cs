namespace ExamDocs.Templates.Report;

/// <summary>A value with its label, as it stands in the heading of a group or in a block.</summary>
/// <param name="Paragraph">Of the law on lifting; empty where it asks for no such thing.</param>
/// <param name="Label">What it is; empty where the value says so itself.</param>
/// <param name="Value">As printed; one that is empty is left out.</param>
/// <param name="IsStrong">Whether it is printed so that it is seen first.</param>
public sealed record LabelledValue(string Paragraph, string Label, string Value, bool IsStrong = false);
