namespace ExamDocs.Templates.Shared.Wording.Corrections;

/// <inheritdoc />
internal sealed class English : CorrectionPhrases
{
    public override string Letterhead => "letterhead";
    public override string ElectronicSignature => "electronic signature";
    public override string ReadingDistance => "reading distance of the label";
    public override string OtherRecords => "what other records say";
    public override string OwnRules => "the user's own rules";

    public override string Of(string what, string whose) => $"{what} of {whose}";

    public override string AndMore(string named, int more) => $"{named} and {Printed.Count(more)} more";

    protected override IReadOnlyDictionary<string, string> Words { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["visit/reference"] = "visit reference",
            ["visit/regime"] = "law applied",
            ["visit/employer"] = "employer",
            ["visit/premises"] = "premises",
            ["visit/hiredFrom"] = "owner",
            ["visit/enforcingAuthority"] = "enforcing authority",
            ["visit/examiner"] = "examiner",
            ["visit/basis"] = "kind of examination",
            ["visit/examinedOn"] = "date of the visit",
            ["visit/reportedOn"] = "date of the report",
            ["items/added"] = "addition",
            ["items/removed"] = "removal",
            ["items/id"] = "id",
            ["items/category"] = "category",
            ["items/description"] = "description",
            ["items/maker"] = "maker",
            ["items/model"] = "model",
            ["items/partNumber"] = "part number",
            ["items/serial"] = "serial",
            ["items/ownersMark"] = "owner's mark",
            ["items/manufactured"] = "date of manufacture",
            ["items/purchased"] = "date of purchase",
            ["items/firstUsed"] = "date of first use",
            ["items/neverUsed"] = "use before the visit",
            ["items/cleanings"] = "number of cleanings",
            ["items/obsoleteOn"] = "obsolescence date",
            ["items/safeWorkingLoad"] = "safe working load",
            ["items/markedStrength"] = "marked strength",
            ["items/standards"] = "standards",
            ["items/fittedTo"] = "assembly",
            ["items/lastExamined"] = "date of the last examination",
            ["items/purpose"] = "purpose",
            ["items/declaration"] = "declaration of conformity",
            ["items/transferEvidence"] = "evidence on transfer",
            ["items/status"] = "status",
            ["items/formerly"] = "former id",
            ["items/notTheSameAs"] = "difference from other items",
            ["examinations"] = "examinations",
            ["examinations/item"] = "item",
            ["examinations/examiner"] = "examiner",
            ["examinations/author"] = "author of the report",
            ["examinations/authenticatedBy"] = "signatory",
            ["examinations/regime"] = "law applied",
            ["examinations/basis"] = "kind of examination",
            ["examinations/scheme"] = "examination scheme",
            ["examinations/event"] = "exceptional event",
            ["examinations/examinedOn"] = "date examined",
            ["examinations/nextBy"] = "date of the next examination",
            ["examinations/observations"] = "answers",
            ["examinations/diameters"] = "diameters",
            ["examinations/tests"] = "tests",
            ["examinations/defects"] = "defects",
            ["examinations/exposure"] = "use and exposure",
            ["examinations/conclusion"] = "conclusion",
            ["renewals"] = "renewals",
            ["remedies"] = "repairs",
            ["releases"] = "releases",
            ["disposals"] = "disposal",
            ["people"] = "particulars",
            ["limits"] = "maker's limits",
        };
}
