using System.Globalization;

namespace ExamDocs.Templates.AuditPack.Wording;

/// <inheritdoc />
internal sealed class English : PackPhrases
{
    public override string Title => "Audit pack";
    public override string Lead => "The register of kit, what is missing, every current document, and evidence of competence.";
    public override string AsOf => "As of";
    public override string BuiltOn => "Built on";
    public override string Employer => "Employer";
    public override string Premises => "Premises";
    public override string Items => "Items";
    public override string All => "all";
    public override string Register => "Register";
    public override string KeptSince => "Kept since";
    public override string Holds => "Holds";

    public override string Counts(int items, int inService, int documents, int evidence) =>
        $"items: {N(items)}, of them in service: {N(inService)}; documents: {N(documents)}; files of evidence: {N(evidence)}";

    public override string WhatAsOfMeans(bool isToday) =>
        isToday
            ? "It says how things stand on the day it was built."
            : "It says how things stood on the day named under as of: by the visits stored and the documents issued until the end of that "
                + "day. Whether the register is sound, and what lies in folders, was looked at on the day it was built.";

    public override string OnlyReadingCopy =>
        "This is a copy for reading. The documents as issued are in the ZIP beside it: only these can be verified, and only these can be "
        + "read aloud by a screen reader.";

    public override string GapsHeading => "Gaps";

    public override string GapCount(int gaps) => gaps == 1 ? "1 gap" : $"{N(gaps)} gaps";

    public override string NoGaps => "Nothing that is looked for is missing.";
    public override string GapsLead => "They come first, and each says what is missing.";

    public override string Gap(PackGapKind kind) =>
        kind switch
        {
            PackGapKind.RegisterNotSound => "The register is not sound",
            PackGapKind.DecidedOtherwise => "Visits that would be decided otherwise today",
            PackGapKind.DocumentMissingOrDiffers => "Documents that the register no longer holds as they were issued",
            PackGapKind.NoDocumentInDate => "Kit with no document in date",
            PackGapKind.NoQuarantineRecord => "Kit withdrawn with no quarantine record",
            PackGapKind.RemedyNotRecorded => "Defects with no remedy recorded by the stated date",
            PackGapKind.ReplacedInCirculation => "Replaced documents still in circulation",
            PackGapKind.DeclarationMissing => "Missing declarations of conformity",
            _ => "Examiners without evidence of competence",
        };

    public override string RegisterHeading => "Register of kit";
    public override string Item => "Item, serial";
    public override string What => "What it is";
    public override string Standing => "How it stands";
    public override string NextBy => "Next examination by";
    public override string Documents => "Documents";
    public override string NoDocument => "none";

    public override string AndMore(int count) => $"and {N(count)} more";

    public override string BackTitle => "Evidence, retention and indexes";
    public override string ExaminersHeading => "Examiners and evidence of their competence";
    public override string NoExaminer => "No examination is on record.";
    public override string Examiner => "Examiner";
    public override string Qualifications => "Qualifications as recorded";
    public override string Evidence => "Evidence enclosed";
    public override string NoneEnclosed => "none enclosed";
    public override string EvidenceHeading => "Evidence and declarations enclosed";
    public override string OtherEvidence => "its name tells no examiner, item or model";
    public override string File => "File";
    public override string About => "About";
    public override string PackPage => "Page of the pack";
    public override string OnlyInZip => "in the ZIP only";
    public override string RetentionHeading => "How long reports have to be kept";
    public override string RetentionLead => "By the law as the program knows it. Accident claims, insurers and contracts may want longer.";
    public override string Visit => "Visit";
    public override string ReportedOn => "Reported on";
    public override string Keep => "Keep its reports";
    public override string Until => "At least until";
    public override string NoRule => "no rule is known: keep them";
    public override string NotYetKnown => "not known yet";
    public override string ByItemHeading => "Index by item";
    public override string Continued => " (continued)";

    public override string OnPage(string number, int page) => $"{number}, p. {N(page)}";

    public override string ByDocumentHeading => "Index by document";
    public override string IssuedOn => "Issued on";

    public override string HowToCheckCopy =>
        "Pages are numbered through at the top: in Roman figures before the documents, in Arabic from the first document on. Whether a "
        + "document is genuine only its file in the ZIP tells: how-to-verify.txt there says how to check it without our program.";

    public override string PageMark(string number) => $"Audit pack, page {number}";

    public override string FilesHeading => "Other files";
    public override string HowToVerifyFile => "how to check all of this without our program";
    public override string WorkbookFile => "the register, the documents and the gaps as tables";
    public override string JsonFile => "the same for programs";
    public override string CheckpointFile => "the state of the register's log";
    public override string ProofsFile => "shows that each document is in that log";

    public override string HowToVerify =>
        """
            HOW TO CHECK THIS PACK WITHOUT THE PROGRAM THAT MADE IT

            1. Is the pack whole and unaltered since it was built?
               Unpack the ZIP. In the folder that holds bagit.txt run

                 sha256sum -c manifest-sha256.txt
                 sha256sum -c tagmanifest-sha256.txt

               (macOS: shasum -a 256 -c ...). Each line must end with OK. The folder is a bag by RFC 8493; any program for such
               bags checks it as well. This shows accidents, not fraud: whoever alters a file can make a new list. So ask the
               sender, by a telephone number known otherwise, for the SHA-256 of tagmanifest-sha256.txt.

            2. Is a document the one that was issued?
               Each PDF in documents is byte for byte as issued. Where it bears an electronic signature, any PDF reader that checks
               signatures shows it. The SHA-256 of every document is in register.json and in the register's log.

            3. Was a document entered in the register's log?
               log/checkpoint.json names the length of the log and its root (RFC 6962 tree, SHA-256). log/inclusion-proofs.json has,
               for each document, its entry in the log and the path from the entry to that root. Save the lines below as check.py in
               the folder that holds bagit.txt, and run them with Python 3. Each document must come out as "ok", and no
               other line: a file that no list names was added later, and a document without a proof is not the register's.
               A checkpoint that you received from the sender earlier, or one published elsewhere, shows that the log was not
               rewritten since.

            4. What nobody can check from here: whether what was recorded is true.

            """;

    public override string Description(string employer, string asOf) => $"Audit pack for {employer} as of {asOf}";

    private static string N(int count) => count.ToString(CultureInfo.InvariantCulture);
}
