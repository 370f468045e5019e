namespace ExamDocs.Templates.Shared.Wording.Codes;

/// <inheritdoc />
internal sealed class English : CodePhrases
{
    public override string Serial(string serial) => $"Serial {serial}";

    public override string Mark(string mark) => $"Owner's mark {mark}";

    public override string ShortMark(string mark) => $"Mark {mark}";

    public override string Ring(string telephone) => $"Ring {telephone}";

    public override string Ring(string telephone, string name) => $"Ring {telephone} ({name})";

    public override string Ask(string name) => $"Ask {name}";
}
