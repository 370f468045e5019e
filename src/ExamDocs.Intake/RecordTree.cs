using ExamDocs.Core.Records;

namespace ExamDocs.Intake;

/// <summary>
/// The tree of a record: what reading the same record from a file would give. What is not recorded is left out; lists
/// of the record are always there.
/// </summary>
public static class RecordTree
{
    public static ObjectNode Of(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return new TreeMembers("")
            .Text("format", record.Format)
            .Part("visit", record.Visit, Visit)
            .List("people", record.People, Person)
            .List("items", record.Items, Item)
            .List("limits", record.Limits, Limits)
            .List("examinations", record.Examinations, ExaminationTree.Of)
            .List("renewals", record.Renewals, (m, r) =>
                m.Text("item", r.Item)
                    .Text("removedPart", r.RemovedPart)
                    .Text("fittedPart", r.FittedPart)
                    .Text("reason", r.Reason)
                    .Text("doneBy", r.DoneBy)
                    .Text("supervisedBy", r.SupervisedBy)
                    .Date("doneOn", r.DoneOn)
                    .Text("retiedBy", r.RetiedBy)
            )
            .List("remedies", record.Remedies, (m, r) =>
                m.Text("item", r.Item).Text("what", r.What).Text("doneBy", r.DoneBy).Date("doneOn", r.DoneOn).Text("evidence", r.Evidence)
            )
            .List("releases", record.Releases, (m, r) =>
                m.Text("item", r.Item)
                    .Text("document", r.Document)
                    .Date("withdrawnOn", r.WithdrawnOn)
                    .Word("because", r.Because, Words.ReleaseReasons)
                    .Text("by", r.By)
                    .Date("on", r.On)
                    .Text("grounds", r.Grounds)
            )
            .List("disposals", record.Disposals, (m, d) =>
                m.Text("item", d.Item).Word("action", d.Action, Words.DisposalActions).Text("by", d.By).Date("on", d.On)
            )
            .Node;
    }

    private static void Visit(TreeMembers m, Visit visit) =>
        m.Text("reference", visit.Reference)
            .Text("regime", visit.Regime)
            .Part("employer", visit.Employer, (e, employer) => PartyOf(e, employer).Text("telephone", employer.Telephone))
            .Part("premises", visit.Premises, Party)
            .Part("hiredFrom", visit.HiredFrom, Party)
            .Part("enforcingAuthority", visit.EnforcingAuthority, Party)
            .Text("examiner", visit.Examiner)
            .Word("basis", visit.Basis, Words.Bases)
            .Date("examinedOn", visit.ExaminedOn)
            .Date("reportedOn", visit.ReportedOn);

    private static void Party(TreeMembers m, Party party) => PartyOf(m, party);

    private static TreeMembers PartyOf(TreeMembers m, Party party) => m.Text("name", party.Name).Text("address", party.Address);

    private static void Person(TreeMembers m, Person person) =>
        m.Text("id", person.Id)
            .Text("name", person.Name)
            .Text("address", person.Address)
            .Text("qualifications", person.Qualifications)
            .Flag("selfEmployed", person.SelfEmployed)
            .Part("employer", person.Employer, Party);

    private static void Item(TreeMembers m, Item item) =>
        m.Text("id", item.Id)
            .Text("category", item.Category)
            .Text("description", item.Description)
            .Text("maker", item.Maker)
            .Text("model", item.Model)
            .Text("partNumber", item.PartNumber)
            .Text("serial", item.Serial)
            .Text("ownersMark", item.OwnersMark)
            .Text("manufactured", item.Manufactured?.ToString())
            .Text("purchased", item.Purchased?.ToString())
            .Text("firstUsed", item.FirstUsed?.ToString())
            .Flag("neverUsed", item.NeverUsed)
            .Number("cleanings", item.Cleanings)
            .Text("obsoleteOn", item.ObsoleteOn?.ToString())
            .Part("safeWorkingLoad", item.SafeWorkingLoad, Load)
            .Part("markedStrength", item.MarkedStrength, Load)
            .Texts("standards", item.Standards)
            .Text("fittedTo", item.FittedTo)
            .Text("lastExamined", item.LastExamined?.ToString())
            .Word("purpose", item.Purpose, Words.Purposes)
            .Part("declaration", item.Declaration, (d, x) => d.Text("reference", x.Reference).Date("on", x.On))
            .Text("transferEvidence", item.TransferEvidence)
            .Word("status", item.Status, Words.Statuses)
            .Text("formerly", item.Formerly)
            .ListIfAny("notTheSameAs", item.NotTheSameAs, (d, x) =>
                d.Text("id", x.Id).Text("document", x.Document).Text("because", x.Because)
            );

    private static void Load(TreeMembers m, Load load) =>
        m.Number("value", load.Value).Text("unit", load.Unit).FlagIfSet("notMarked", load.NotMarked).Text("basis", load.Basis);

    private static void Limits(TreeMembers m, MakersLimits limits) =>
        m.Text("maker", limits.Maker)
            .Text("model", limits.Model)
            .Text("partNumber", limits.PartNumber)
            .Part("source", limits.Source, (s, x) => s.Text("title", x.Title).Text("revision", x.Revision).Text("page", x.Page))
            .Number("maxUseYears", limits.MaxUseYears)
            .Number("maxStorageYears", limits.MaxStorageYears)
            .Number("maxAgeYears", limits.MaxAgeYears)
            .Number("maxCleanings", limits.MaxCleanings)
            .FlagIfSet("eventEndsService", limits.EventEndsService)
            .Number("intervalMonths", limits.IntervalMonths)
            .FlagIfSet("noLimit", limits.NoLimit)
            .Part("unobtainable", limits.Unobtainable, (u, x) => u.Text("sought", x.Sought).Date("useUntil", x.UseUntil))
            .Number("nominalDiameterMm", limits.NominalDiameterMm)
            .Number("diameterTolerancePercent", limits.DiameterTolerancePercent)
            .Texts("permittedParts", limits.PermittedParts ?? [])
            .Number("minTailMm", limits.MinTailMm)
            .Word("retying", limits.Retying, Words.Retyings)
            .Text("description", limits.Description)
            .Part("safeWorkingLoad", limits.SafeWorkingLoad, Load)
            .Part("markedStrength", limits.MarkedStrength, Load)
            .Texts("standards", limits.Standards);
}
