namespace ExamDocs.Templates.Shared.Wording.Kinds;

/// <inheritdoc />
internal sealed class English : KindPhrases
{
    protected override string CopyOfReport => "copy of report";

    public override string Word(string kind) =>
        kind switch
        {
            "report" => "report",
            "notice" => "notice of defect",
            "certificate" => "certificate",
            "quarantine-label" => "do-not-use label",
            "due-label" => "next-examination label",
            "record" => "equipment record",
            "check-sheet" => "check sheet",
            "evidence" => "evidence file",
            "pack" => "audit pack",
            _ => kind,
        };
}
