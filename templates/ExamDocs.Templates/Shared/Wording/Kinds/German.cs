namespace ExamDocs.Templates.Shared.Wording.Kinds;

/// <inheritdoc />
internal sealed class German : KindPhrases
{
    protected override string CopyOfReport => "Abschrift des Berichts";

    public override string Word(string kind) =>
        kind switch
        {
            "report" => "Bericht",
            "notice" => "Mängelmeldung",
            "certificate" => "Bescheinigung",
            "quarantine-label" => "Sperrschild",
            "due-label" => "Prüfetikett",
            "record" => "Gerätekarte",
            "check-sheet" => "Prüfbogen",
            "evidence" => "Nachweisakte",
            "pack" => "Prüfmappe",
            _ => kind,
        };
}
