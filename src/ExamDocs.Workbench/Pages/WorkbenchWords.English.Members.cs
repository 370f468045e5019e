using ExamDocs.Core.Records;

namespace ExamDocs.Workbench.Pages;

/// <content>English, for the fields of a record.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        private static readonly (string Value, string Label)[] YesNo = [("yes", "yes"), ("no", "no")];

        protected override string AnswerWord => "answer";
        protected override string NoteWord => "note";

        public override IReadOnlyList<(string Value, string Label)>? Choices(string name) =>
            name switch
            {
                "visit/basis" =>
                [
                    ("six-month", "six months after the last"),
                    ("twelve-month", "twelve months after the last"),
                    ("scheme", "by a scheme of examination"),
                    ("exceptional", "after an exceptional event"),
                    ("first-use", "before first use"),
                    ("installation", "after installation"),
                ],
                "examiner/selfEmployed" or "item/neverUsed" or "item/safeWorkingLoad/notMarked" or "defect/imminentRisk" => YesNo,
                "defect/danger" => [("now", "is a danger now"), ("later", "could become a danger")],
                "item/safeWorkingLoad/unit" or "item/markedStrength/unit" => [.. Core.Records.Words.LoadUnits.Select(u => (u, u))],
                "item/purpose" =>
                [
                    ("lifts-persons", "lifts or holds persons"),
                    ("accessory", "accessory for lifting"),
                    ("other", "other lifting"),
                    ("fall-arrest-only", "fall arrest only"),
                ],
                "item/status" =>
                [
                    ("in-use", "in use"),
                    ("stored", "stored"),
                    ("not-presented", "not presented"),
                    ("lost", "lost"),
                    ("destroyed", "destroyed"),
                ],
                _ => null,
            };

        protected override string OfVisit(string name) =>
            name switch
            {
                "visit/reference" => "Reference of the visit",
                "visit/employer/name" => "Employer",
                "visit/employer/address" => "Employer's address",
                "visit/premises/name" => "Premises",
                "visit/premises/address" => "Address of the premises",
                "visit/examinedOn" => "Examined on",
                "visit/reportedOn" => "Date of the report",
                "visit/regime" => "Regime",
                "visit/basis" => "Why it is examined",
                "visit/hiredFrom/name" => "Hired from (where it is)",
                "visit/hiredFrom/address" => "Address of that owner",
                "visit/enforcingAuthority/name" => "Enforcing authority",
                _ => "Address of the authority",
            };

        protected override string OfExaminer(string name) =>
            name switch
            {
                "examiner/name" => "Examiner",
                "examiner/address" => "Examiner's address",
                "examiner/qualifications" => "Examiner's qualifications",
                "examiner/selfEmployed" => "Is the examiner self-employed?",
                "examiner/employer/name" => "Examiner's employer",
                _ => "Address of the examiner's employer",
            };

        protected override string OfItem(string member) =>
            member switch
            {
                "id" => "Id",
                "category" => "Category",
                "description" => "Description",
                "maker" => "Maker",
                "model" => "Model",
                "partNumber" => "Part number",
                "serial" => "Serial number",
                "ownersMark" => "Owner's mark",
                "manufactured" => "Manufactured (day, month or year)",
                "purchased" => "Purchased",
                "firstUsed" => "First used",
                "neverUsed" => "Never used yet",
                "obsoleteOn" => "Obsolete on (as printed)",
                "safeWorkingLoad/value" => "Safe working load",
                "safeWorkingLoad/unit" => "Unit of the safe working load",
                "safeWorkingLoad/notMarked" => "Safe working load not marked",
                "safeWorkingLoad/basis" => "Where the load is taken from",
                "markedStrength/value" => "Marked strength",
                "markedStrength/unit" => "Unit of the marked strength",
                "standards" => "Standards marked",
                "fittedTo" => "Fitted to",
                "lastExamined" => "Last examined",
                "purpose" => "Purpose",
                "status" => "Status",
                "declaration/reference" => "Declaration of conformity",
                "declaration/on" => "Date of the declaration",
                "transferEvidence" => "Evidence of the last examination from its former keeper",
                "formerly" => "Former id",
                _ => member,
            };

        protected override string OfExamination(string member) =>
            member switch
            {
                "conclusion" => "Your conclusion",
                "nextBy" => "Examine again by, where earlier than the rule",
                "exposure/hardware" => "Hardware it runs on",
                "exposure/ground" => "Ground it is used on",
                "exposure/userMassKg" => "Mass of the user, kg",
                _ => "Use",
            };

        protected override string OfDefect(string member) =>
            member switch
            {
                "part" => "Part",
                "description" => "Description of the defect",
                "danger" => "Danger",
                "becomesDangerOn" => "Could become a danger on",
                "remedy" => "Remedy needed",
                "imminentRisk" => "Existing or imminent risk of serious injury",
                "notified/whom" => "Whom you told",
                "notified/how" => "How",
                _ => "When you told them",
            };
    }
}
