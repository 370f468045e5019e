namespace ExamDocs.Core.Findings;

/// <summary>
/// A value in a message that is a text of the program's own data, for example of a regime: the terms have its translation.
/// </summary>
public sealed record ProgramText(string English)
{
    public override string ToString() => English;
}

/// <summary>A value in a message that is known in English only, because an earlier version of the program kept it so.</summary>
public sealed record EnglishText(string Text)
{
    public override string ToString() => Text;
}
