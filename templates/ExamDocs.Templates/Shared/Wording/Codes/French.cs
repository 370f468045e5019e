namespace ExamDocs.Templates.Shared.Wording.Codes;

/// <inheritdoc />
internal sealed class French : CodePhrases
{
    public override string Serial(string serial) => $"N° de série {serial}";

    public override string Mark(string mark) => $"Marque du propriétaire {mark}";

    public override string ShortMark(string mark) => $"Marque {mark}";

    public override string Ring(string telephone) => $"Tél. {telephone}";

    public override string Ring(string telephone, string name) => $"Tél. {telephone} ({name})";

    public override string Ask(string name) => $"Renseignements\u00A0: {name}";
}
