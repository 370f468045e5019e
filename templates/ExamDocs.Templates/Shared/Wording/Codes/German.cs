namespace ExamDocs.Templates.Shared.Wording.Codes;

/// <inheritdoc />
internal sealed class German : CodePhrases
{
    public override string Serial(string serial) => $"Seriennummer {serial}";

    public override string Mark(string mark) => $"Eigentümerzeichen {mark}";

    public override string ShortMark(string mark) => $"Zeichen {mark}";

    public override string Ring(string telephone) => $"Tel. {telephone}";

    public override string Ring(string telephone, string name) => $"Tel. {telephone} ({name})";

    public override string Ask(string name) => $"Auskunft: {name}";
}
