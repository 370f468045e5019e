namespace ExamDocs.Templates.Wording;

/// <summary>The phrases of a report by one letter, for its templates.</summary>
public static class ReportShorthand
{
    public static ReportPhrases W => Phrases.Report;

    public static LawAndSourcesPhrases L => Phrases.LawAndSources;
}

/// <summary>The phrases of a notice and of a report by one letter each, for the templates of a notice.</summary>
public static class NoticeShorthand
{
    public static NoticePhrases W => Phrases.Notice;

    public static ReportPhrases R => Phrases.Report;
}

/// <summary>The phrases of a certificate and of a report by one letter each, for the templates of a certificate.</summary>
public static class CertificateShorthand
{
    public static CertificatePhrases W => Phrases.Certificate;

    public static ReportPhrases R => Phrases.Report;
}

/// <summary>The phrases of a label by one letter, for its templates.</summary>
public static class LabelShorthand
{
    public static LabelPhrases W => Phrases.Label;
}

/// <summary>The phrases of a next-examination label by one letter, for its templates.</summary>
public static class DueLabelShorthand
{
    public static DueLabelPhrases W => Phrases.DueLabel;
}

/// <summary>The phrases of a check sheet and of a report by one letter each, for its templates.</summary>
public static class CheckSheetShorthand
{
    public static CheckSheetPhrases W => Phrases.CheckSheet;

    public static ReportPhrases R => Phrases.Report;
}

/// <summary>The phrases of an equipment record and of a report by one letter each, for its templates.</summary>
public static class EquipmentRecordShorthand
{
    public static EquipmentRecordPhrases W => Phrases.EquipmentRecord;

    public static ReportPhrases R => Phrases.Report;
}

/// <summary>The phrases of a cover to the enforcing authority and of a report by one letter each, for its templates.</summary>
public static class AuthorityCopyShorthand
{
    public static AuthorityCopyPhrases W => Phrases.AuthorityCopy;

    public static ReportPhrases R => Phrases.Report;
}
