using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.AuditPack.Wording;

/// <summary>Words of an audit pack.</summary>
public abstract class PackPhrases
{
    public static InEachLanguage<PackPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the pack that is being made.</summary>
    public static PackPhrases Current => Languages.Current;

    /// <summary>Stands in the margins too: no quotation mark.</summary>
    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string AsOf { get; }
    public abstract string BuiltOn { get; }
    public abstract string Employer { get; }
    public abstract string Premises { get; }
    public abstract string Items { get; }
    public abstract string All { get; }
    public abstract string Register { get; }
    public abstract string KeptSince { get; }
    public abstract string Holds { get; }
    public abstract string Counts(int items, int inService, int documents, int evidence);

    /// <param name="isToday">Whether the pack was built on the day for which it says how things stand.</param>
    public abstract string WhatAsOfMeans(bool isToday);

    public abstract string OnlyReadingCopy { get; }

    public abstract string GapsHeading { get; }
    public abstract string GapCount(int gaps);
    public abstract string NoGaps { get; }
    public abstract string GapsLead { get; }

    /// <summary>What gaps of a kind have in common.</summary>
    public abstract string Gap(PackGapKind kind);

    public abstract string RegisterHeading { get; }
    public abstract string Item { get; }
    public abstract string What { get; }
    public abstract string Standing { get; }
    public abstract string NextBy { get; }
    public abstract string Documents { get; }
    public abstract string NoDocument { get; }
    public abstract string AndMore(int count);

    public abstract string BackTitle { get; }
    public abstract string ExaminersHeading { get; }
    public abstract string NoExaminer { get; }
    public abstract string Examiner { get; }
    public abstract string Qualifications { get; }
    public abstract string Evidence { get; }
    public abstract string NoneEnclosed { get; }
    public abstract string EvidenceHeading { get; }
    public abstract string OtherEvidence { get; }
    public abstract string File { get; }
    public abstract string About { get; }
    public abstract string PackPage { get; }
    public abstract string OnlyInZip { get; }
    public abstract string RetentionHeading { get; }
    public abstract string RetentionLead { get; }
    public abstract string Visit { get; }
    public abstract string ReportedOn { get; }
    public abstract string Keep { get; }
    public abstract string Until { get; }
    public abstract string NoRule { get; }
    public abstract string NotYetKnown { get; }
    public abstract string ByItemHeading { get; }
    public abstract string Continued { get; }
    public abstract string OnPage(string number, int page);
    public abstract string ByDocumentHeading { get; }
    public abstract string IssuedOn { get; }
    public abstract string HowToCheckCopy { get; }

    /// <summary>At the top of a page; in ASCII characters, and no bracket or backslash.</summary>
    public abstract string PageMark(string number);

    public abstract string FilesHeading { get; }
    public abstract string HowToVerifyFile { get; }
    public abstract string WorkbookFile { get; }
    public abstract string JsonFile { get; }
    public abstract string CheckpointFile { get; }
    public abstract string ProofsFile { get; }

    /// <summary>The text beside the pack, before the program that checks the proofs.</summary>
    public abstract string HowToVerify { get; }

    /// <summary>Declared for the cover of the bag: what it is, in a line.</summary>
    public abstract string Description(string employer, string asOf);
}
