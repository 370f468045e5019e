using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;
using NodaTime.Text;

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
            .Part("employer", visit.Employer, Party)
            .Part("premises", visit.Premises, Party)
            .Part("hiredFrom", visit.HiredFrom, Party)
            .Part("enforcingAuthority", visit.EnforcingAuthority, Party)
            .Date("examinedOn", visit.ExaminedOn)
            .Date("reportedOn", visit.ReportedOn);

    private static void Party(TreeMembers m, Party party) => m.Text("name", party.Name).Text("address", party.Address);

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
            .Word("retying", limits.Retying, Words.Retyings);
}

/// <summary>The tree of an examination.</summary>
internal static class ExaminationTree
{
    /// <summary>Left out, the visit's date would stand in for a date that was typed and could not be read.</summary>
    private const string Unreadable = "unreadable";

    public static void Of(TreeMembers m, Examination examination) =>
        m.Text("item", examination.Item)
            .Text("examiner", examination.Examiner)
            .Text("author", examination.Author)
            .Text("authenticatedBy", examination.AuthenticatedBy)
            .Text("regime", examination.Regime)
            .Word("basis", examination.Basis, Words.Bases)
            .Part("scheme", examination.Scheme, (s, x) =>
                s.Text("reference", x.Reference).Text("author", x.Author).Number("months", x.Months)
            )
            .Part("event", examination.Event, (e, x) => e.Text("what", x.What).Date("on", x.On))
            .Date("examinedOn", examination.ExaminedOn)
            .Text("examinedOn", examination.ExaminedOnUnreadable ? Unreadable : null)
            .Date("nextBy", examination.NextBy)
            .List("observations", examination.Observations, (o, x) =>
                o.Text("criterion", x.Criterion)
                    .Text("state", x.StateAsTyped ?? (x.State is { } state ? Words.States.WordFor(state) : null))
                    .Text("note", x.Note)
                    .Text("photo", x.Photo)
            )
            .List("diameters", examination.Diameters, (d, x) => d.Number("positionMm", x.PositionMm).Numbers("readingsMm", x.ReadingsMm))
            .List("tests", examination.Tests, (t, x) => t.Text("description", x.Description).Text("result", x.Result))
            .List("defects", examination.Defects, Defect)
            .Part("exposure", examination.Exposure, (e, x) =>
                e.Text("hardware", x.Hardware).Text("ground", x.Ground).Number("userMassKg", x.UserMassKg).Text("use", x.Use)
            )
            .Word("conclusion", examination.Conclusion, Words.Conclusions);

    private static void Defect(TreeMembers m, Defect defect) =>
        m.Text("criterion", defect.Criterion)
            .Text("part", defect.Part)
            .Text("description", defect.Description)
            .Word("danger", defect.Danger, Words.Dangers)
            .Date("becomesDangerOn", defect.BecomesDangerOn)
            .Text("remedy", defect.Remedy)
            .Flag("imminentRisk", defect.ImminentRisk)
            .Part("notified", defect.Notified, (n, x) => n.Text("whom", x.Whom).Text("how", x.How).Date("on", x.On));
}

/// <summary>Collects the members of one object of the tree.</summary>
internal sealed class TreeMembers(string pointer)
{
    private readonly List<KeyValuePair<string, SourceNode>> _members = [];

    public ObjectNode Node => new(pointer, _members);

    public TreeMembers Text(string name, string? text) => text is null ? this : Add(name, at => new TextNode(at, text));

    public TreeMembers Date(string name, LocalDate? date) => date is { } day ? Text(name, LocalDatePattern.Iso.Format(day)) : this;

    public TreeMembers Number(string name, decimal? number) => number is { } value ? Add(name, at => NumberAt(at, value)) : this;

    public TreeMembers Flag(string name, bool? flag) => flag is { } value ? Add(name, at => new BooleanNode(at, value)) : this;

    /// <summary>A flag whose absence means no.</summary>
    public TreeMembers FlagIfSet(string name, bool flag) => Flag(name, flag ? true : null);

    public TreeMembers Word<T>(string name, T? value, WordTable<T> words)
        where T : struct, Enum => Text(name, value is { } known ? words.WordFor(known) : null);

    public TreeMembers Texts(string name, IReadOnlyList<string> texts) =>
        texts.Count == 0 ? this : Add(name, at => new ListNode(at, [.. texts.Select((t, n) => new TextNode(Element(at, n), t))]));

    public TreeMembers Numbers(string name, IReadOnlyList<decimal?> numbers) =>
        Add(name, at => new ListNode(
            at,
            [
                .. numbers.Select(
                    (number, n) => number is { } value ? NumberAt(Element(at, n), value) : (SourceNode)new NullNode(Element(at, n))
                ),
            ]
        ));

    public TreeMembers Part<T>(string name, T? part, Action<TreeMembers, T> fill)
        where T : class => part is null ? this : Add(name, at => Filled(at, part, fill));

    public TreeMembers List<T>(string name, IReadOnlyList<T> parts, Action<TreeMembers, T> fill) =>
        Add(name, at => new ListNode(at, [.. parts.Select((part, n) => Filled(Element(at, n), part, fill))]));

    /// <summary>A list whose absence means that it is empty.</summary>
    public TreeMembers ListIfAny<T>(string name, IReadOnlyList<T> parts, Action<TreeMembers, T> fill) =>
        parts.Count == 0 ? this : List(name, parts, fill);

    private static ObjectNode Filled<T>(string at, T part, Action<TreeMembers, T> fill)
    {
        var members = new TreeMembers(at);
        fill(members, part);
        return members.Node;
    }

    private static string Element(string list, int n) => string.Create(CultureInfo.InvariantCulture, $"{list}/{n}");

    private static NumberNode NumberAt(string at, decimal value) => new(at, value.ToString(CultureInfo.InvariantCulture));

    private TreeMembers Add(string name, Func<string, SourceNode> node)
    {
        _members.Add(KeyValuePair.Create(name, node($"{pointer}/{name}")));
        return this;
    }
}
