using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

/// <summary>Every sentence that is printed in English. What all documents share stands here, the rest beside it.</summary>
public static partial class English
{
    public const string NotRecorded = "not recorded";
    public const string AddressNotRecorded = "address not recorded";
    public const string UnitNotRecorded = "(unit not recorded)";
    public const string OnePerson = "person";
    public const string LoadNotMarked = "not marked on the item";
    public const string LoadBasis = "taken from:";
    public const string Issued = "Issued";
    public const string Page = "Page";
    public const string Of = "of";
    public const string Signature = "Signature";
    public const string DateSigned = "Date signed";
    public const string PlaceSigned = "Place";
    public const string QrLabel = "QR code of this document's number and the item";
    public const string DocumentNumber = "Document number";
    public const string IssueDate = "Date of issue";
    public const string VisitReference = "Visit reference";
    public const string CautionsHeading = "Please note";
    public const string None = "none";
    public const string Yes = "yes";
    public const string No = "no";

    public const string CautionPrecedence =
        "The maker's instructions, the law of the place and the judgement of the competent person come before this document.";

    public static string HowToVerify(string number) =>
        $"To verify: check this document against the issuer's register by its number, {number}, and the SHA-256 of its file.";

    public static string Imprint(string version) => $"Printed by ExamDocs {version}. The examination and its conclusions are the examiner's.";

    /// <summary>The outcome in the words used everywhere.</summary>
    public static string Outcome(Outcome outcome) => outcome switch
    {
        Core.Determination.Outcome.Fit => "May stay in service",
        Core.Determination.Outcome.FitUntil => "May stay in service until a date",
        Core.Determination.Outcome.Undetermined => "Not determined: do not use",
        _ => "Not to be used",
    };

    /// <summary>The outcome with its date, where it has one.</summary>
    public static string Outcome(Outcome outcome, LocalDate? until) =>
        outcome is Core.Determination.Outcome.FitUntil ? $"May stay in service until {Printed.Day(until)}" : Outcome(outcome);

    public static string State(ObservedState state) => state switch
    {
        ObservedState.Clear => "clear",
        ObservedState.Noted => "noted",
        ObservedState.Doubt => "doubt",
        ObservedState.Defect => "defect",
        ObservedState.NoSign => "nobody to ask; no sign found",
        ObservedState.NotExamined => "not examined",
        _ => "not applicable",
    };

    public static string Class(CriterionClass? criterion) => criterion switch
    {
        CriterionClass.Decisive => "decisive",
        CriterionClass.Judged => "judged",
        CriterionClass.Advisory => "advisory",
        _ => "not in the catalogue",
    };

    public static string Purpose(Purpose? purpose) => purpose switch
    {
        Core.Records.Purpose.LiftsPersons => "lifts or lowers persons",
        Core.Records.Purpose.Accessory => "accessory for lifting",
        Core.Records.Purpose.Other => "other lifting equipment",
        Core.Records.Purpose.FallArrestOnly => "arrests falls only",
        _ => NotRecorded,
    };

    public static string Status(ItemStatus? status) => status switch
    {
        ItemStatus.InUse => "in use",
        ItemStatus.Stored => "in store",
        ItemStatus.NotPresented => "not presented",
        ItemStatus.Lost => "lost",
        ItemStatus.Destroyed => "destroyed",
        _ => NotRecorded,
    };
}
