namespace ExamDocs.Templates.Shared.Wording.Kinds;

/// <inheritdoc />
internal sealed class French : KindPhrases
{
    protected override string CopyOfReport => "copie du rapport";

    public override string Word(string kind) =>
        kind switch
        {
            "report" => "rapport",
            "notice" => "avis de défectuosité",
            "certificate" => "certificat",
            "quarantine-label" => "étiquette de mise à l’écart",
            "due-label" => "étiquette d’échéance",
            "record" => "fiche de vie",
            "check-sheet" => "fiche de vérification",
            "evidence" => "dossier de preuves",
            "pack" => "dossier d’audit",
            _ => kind,
        };
}
