using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Common;

/// <inheritdoc />
internal sealed class English : CommonPhrases
{
    public override string NotRecorded => "not recorded";
    public override string AddressNotRecorded => "address not recorded";
    public override string UnitNotRecorded => "(unit not recorded)";
    public override string OnePerson => "person";
    public override string Persons => "persons";
    public override string LoadNotMarked => "not marked on the item";
    public override string LoadBasis => "taken from:";
    public override string Issued => "Issued";
    public override string Page => "Page";
    public override string Of => "of";
    public override string Signature => "Signature";
    public override string ToBeSigned => "Signature – to be signed by hand";
    public override string DateSigned => "Date signed";
    public override string PlaceSigned => "Place";
    public override string QrLabel => "QR code of this document's number and the item";
    public override string DocumentNumber => "Document number";
    public override string IssueDate => "Date of issue";
    public override string VisitReference => "Visit reference";
    public override string CautionsHeading => "Please note";
    public override string None => "none";
    public override string Yes => "yes";
    public override string No => "no";

    public override string SignedElectronically(string name) => $"Signed electronically with the certificate of {name}.";

    public override string SignatureCertificate(string issuer, string serialNumber, string fingerprint) =>
        $"Issued by {issuer}, serial number {serialNumber}, SHA-256 beginning {fingerprint}.";

    public override string SignatureTimestamped => "With a timestamp.";

    public override string SignatureNotTimestamped => "Without a timestamp.";

    public override string HowToCheckSignature =>
        "To check, open the file in a program that shows signatures and compare these particulars. The signature is in "
        + "the file; a printout is not signed.";

    public override string SignatureField => "Electronic signature of this document";

    public override string CautionPrecedence =>
        "The maker's instructions, the law of the place and the judgement of the competent person come before this document.";

    public override string LanguageNote => "Issued and recorded in English.";

    public override string LogoOf(string name) => $"Logo of {name}";

    public override string Replaces(string number, string? reason) => $"Replaces {number}: {reason ?? "the record was corrected"}.";

    public override string HowToVerify(string number) =>
        $"To verify: check this document against the issuer's register by its number, {number}, and the SHA-256 of its file.";

    public override string Imprint(string version) =>
        $"Printed by ExamDocs {version}. The examination and its conclusions are the examiner's.";

    public override string Outcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Fit => "May stay in service",
            Core.Records.Outcome.FitUntil => "May stay in service until a date",
            Core.Records.Outcome.Undetermined => "Not determined: do not use",
            _ => "Not to be used",
        };

    public override string Outcome(Outcome outcome, LocalDate? until) =>
        outcome is Core.Records.Outcome.FitUntil ? $"May stay in service until {Printed.Day(until)}" : Outcome(outcome);

    public override string Class(CriterionClass? criterion) =>
        criterion switch
        {
            CriterionClass.Decisive => "decisive",
            CriterionClass.Judged => "judged",
            CriterionClass.Advisory => "advisory",
            _ => "not in the catalogue",
        };

    public override string Purpose(Purpose? purpose) =>
        purpose switch
        {
            Core.Records.Purpose.LiftsPersons => "lifts or lowers persons",
            Core.Records.Purpose.Accessory => "accessory for lifting",
            Core.Records.Purpose.Other => "other lifting equipment",
            Core.Records.Purpose.FallArrestOnly => "arrests falls only",
            _ => NotRecorded,
        };

    public override string Status(ItemStatus? status) =>
        status switch
        {
            ItemStatus.InUse => "in use",
            ItemStatus.Stored => "in store",
            ItemStatus.NotPresented => "not presented",
            ItemStatus.Lost => "lost",
            ItemStatus.Destroyed => "destroyed",
            _ => NotRecorded,
        };

    public override string Disposal(DisposalAction? action) =>
        action switch
        {
            DisposalAction.Quarantined => "quarantined",
            DisposalAction.SentForRepair => "sent for repair",
            DisposalAction.Destroyed => "destroyed",
            _ => NotRecorded,
        };
}
