using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>Binds source nodes to a record, reporting whatever does not fit instead of stopping at it.</summary>
internal static class RecordBinder
{
    /// <summary>Largest load, diameter or distance that is not a slip of the finger, whatever its unit.</summary>
    private const decimal Plausible = 1_000_000;

    /// <summary>More cleanings than anything lives through: a slip of the finger.</summary>
    private const int MostCleanings = 10_000;

    public static (ExaminationRecord Record, IReadOnlyList<Finding> Findings) Bind(SourceNode root)
    {
        var sink = new FindingSink();
        if (root is not ObjectNode node)
        {
            sink.Report(IntakeRules.WrongType, "", "here belongs a record in braces");
            return (new ExaminationRecord(), sink.All);
        }
        var members = new Members(node, sink);
        var record = Record(members);
        members.Finish();
        if (!string.Equals(record.Format, ExaminationRecord.FormatName, StringComparison.Ordinal))
            sink.Report(
                IntakeRules.UnknownFormat,
                "/format",
                $"the format is '{TextGuard.Cut(record.Format ?? "not recorded", 80)}', not {ExaminationRecord.FormatName}"
            );
        return (record, sink.All);
    }

    private static ExaminationRecord Record(Members m) =>
        new()
        {
            Format = m.Text("format"),
            Visit = m.Part("visit", Visit) ?? new Visit(),
            People = m.List("people", Person),
            Items = m.List("items", Item),
            Limits = m.List("limits", Limits),
            Examinations = m.List("examinations", ExaminationBinder.Examination),
            Renewals = m.List("renewals", Renewal),
            Remedies = m.List("remedies", Remedy),
            Releases = m.List("releases", Release),
            Disposals = m.List("disposals", Disposal),
        };

    private static Visit Visit(Members m) =>
        new()
        {
            Reference = m.Identity("reference"),
            Regime = m.Identity("regime"),
            Employer = m.Part("employer", Party),
            Premises = m.Part("premises", Party),
            HiredFrom = m.Part("hiredFrom", Party),
            EnforcingAuthority = m.Part("enforcingAuthority", Party),
            ExaminedOn = m.Date("examinedOn"),
            ReportedOn = m.Date("reportedOn"),
        };

    private static Party Party(Members m) => new() { Name = m.Text("name"), Address = m.Text("address") };

    private static Person Person(Members m) =>
        new()
        {
            Id = m.Identity("id"),
            Name = m.Text("name"),
            Address = m.Text("address"),
            Qualifications = m.Text("qualifications"),
            SelfEmployed = m.Flag("selfEmployed"),
            Employer = m.Part("employer", Party),
        };

    private static Item Item(Members m) =>
        new()
        {
            Id = m.Identity("id"),
            Category = m.Identity("category"),
            Description = m.Text("description"),
            Maker = m.Text("maker"),
            Model = m.Text("model"),
            PartNumber = m.Identity("partNumber"),
            Serial = m.Identity("serial"),
            OwnersMark = m.Identity("ownersMark"),
            Manufactured = m.Partial("manufactured"),
            Purchased = m.Partial("purchased"),
            FirstUsed = m.Partial("firstUsed"),
            NeverUsed = m.Flag("neverUsed"),
            Cleanings = m.Whole("cleanings", 0, MostCleanings),
            ObsoleteOn = m.Partial("obsoleteOn"),
            SafeWorkingLoad = m.Part("safeWorkingLoad", Load),
            MarkedStrength = m.Part("markedStrength", Load),
            Standards = m.Texts("standards") ?? [],
            FittedTo = m.Identity("fittedTo"),
            LastExamined = m.Partial("lastExamined"),
            Purpose = m.Word("purpose", Words.Purposes),
            Declaration = m.Part("declaration", d => new Declaration { Reference = d.Text("reference"), On = d.Date("on") }),
            TransferEvidence = m.Text("transferEvidence"),
            Status = m.Word("status", Words.Statuses),
            Formerly = m.Identity("formerly"),
            NotTheSameAs = m.List("notTheSameAs", d => new DifferentItem
            {
                Id = d.Identity("id"),
                Document = d.Identity("document"),
                Because = d.Text("because"),
            }),
        };

    private static Load Load(Members m) =>
        new()
        {
            Value = m.Number("value", 0, Plausible),
            Unit = m.OneOf("unit", Words.LoadUnits),
            NotMarked = m.Flag("notMarked") ?? false,
            Basis = m.Text("basis"),
        };

    private static MakersLimits Limits(Members m) =>
        new()
        {
            Maker = m.Text("maker"),
            Model = m.Text("model"),
            PartNumber = m.Identity("partNumber"),
            Source = m.Part("source", s => new LimitsSource
            {
                Title = s.Text("title"),
                Revision = s.Text("revision"),
                Page = s.Text("page"),
            }),
            MaxUseYears = m.Whole("maxUseYears", 1, 100),
            MaxStorageYears = m.Whole("maxStorageYears", 1, 100),
            MaxAgeYears = m.Whole("maxAgeYears", 1, 100),
            MaxCleanings = m.Whole("maxCleanings", 0, MostCleanings),
            EventEndsService = m.Flag("eventEndsService") ?? false,
            IntervalMonths = m.Whole("intervalMonths", 1, 120),
            NoLimit = m.Flag("noLimit") ?? false,
            Unobtainable = m.Part("unobtainable", u => new Unobtainable { Sought = u.Text("sought"), UseUntil = u.Date("useUntil") }),
            NominalDiameterMm = m.Number("nominalDiameterMm", 0.1m, 1_000),
            DiameterTolerancePercent = m.Number("diameterTolerancePercent", 0, 100),
            PermittedParts = m.Texts("permittedParts"),
            MinTailMm = m.Number("minTailMm", 0, 10_000),
            Retying = m.Word("retying", Words.Retyings),
        };

    private static Renewal Renewal(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            RemovedPart = m.Identity("removedPart"),
            FittedPart = m.Identity("fittedPart"),
            Reason = m.Text("reason"),
            DoneBy = m.Identity("doneBy"),
            SupervisedBy = m.Identity("supervisedBy"),
            DoneOn = m.Date("doneOn"),
            RetiedBy = m.Identity("retiedBy"),
        };

    private static Remedy Remedy(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            What = m.Text("what"),
            DoneBy = m.Text("doneBy"),
            DoneOn = m.Date("doneOn"),
            Evidence = m.Text("evidence"),
        };

    private static Release Release(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            Document = m.Identity("document"),
            By = m.Identity("by"),
            On = m.Date("on"),
            Grounds = m.Text("grounds"),
            WithdrawnOn = m.Date("withdrawnOn"),
            Because = m.WordOnce("because", Words.ReleaseReasons),
        };

    private static Disposal Disposal(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            Action = m.Word("action", Words.DisposalActions),
            By = m.Text("by"),
            On = m.Date("on"),
        };
}
