using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>Binds source nodes to a record, reporting whatever does not fit instead of stopping at it.</summary>
internal static class RecordBinder
{
    public static (ExaminationRecord Record, IReadOnlyList<Finding> Findings) Bind(SourceNode root)
    {
        var sink = new FindingSink();
        if (root is not ObjectNode node)
        {
            sink.Report(IntakeRules.WrongType, "", $"this must be a record in braces");
            return (new ExaminationRecord(), sink.All);
        }
        var members = new Members(node, sink);
        var record = Record(members);
        members.Finish();
        if (!string.Equals(record.Format, ExaminationRecord.FormatName, StringComparison.Ordinal))
            sink.Report(
                IntakeRules.UnknownFormat,
                "/format",
                record.Format is { } typed
                    ? (Message)$"the format is '{TextGuard.Cut(typed, 80)}', not {ExaminationRecord.FormatName}"
                    : $"the format is not recorded; it must be {ExaminationRecord.FormatName}"
            );
        sink.Finish();
        return (record, sink.All);
    }

    private static ExaminationRecord Record(Members m) =>
        new()
        {
            Format = m.Text("format"),
            Visit = m.Part("visit", Visit) ?? new Visit(),
            People = m.List("people", Person),
            Items = m.List("items", ItemBinder.Item),
            Limits = m.List("limits", LimitsBinder.Limits),
            Examinations = m.List("examinations", ExaminationBinder.Examination),
            Renewals = m.List("renewals", Renewal),
            Remedies = m.List("remedies", Remedy),
            Releases = m.List("releases", Release),
            Disposals = m.List("disposals", Disposal),
        };

    private static Visit Visit(Members m) =>
        new()
        {
            Reference = m.Marking("reference"),
            Regime = m.Identity("regime"),
            Employer = m.Part("employer", e => Party(e) with { Telephone = e.FilledText("telephone") }),
            Premises = m.Part("premises", Party),
            HiredFrom = m.Part("hiredFrom", Party),
            EnforcingAuthority = m.Part("enforcingAuthority", Party),
            Examiner = m.Identity("examiner"),
            Basis = m.Word("basis", Words.Bases),
            ExaminedOn = m.Date("examinedOn"),
            ReportedOn = m.Date("reportedOn"),
        };

    private static Party Party(Members m) => new() { Name = m.FilledText("name"), Address = m.FilledText("address") };

    private static Person Person(Members m) =>
        new()
        {
            Id = m.Identity("id"),
            Name = m.FilledText("name"),
            Address = m.FilledText("address"),
            Qualifications = m.FilledText("qualifications"),
            SelfEmployed = m.Flag("selfEmployed"),
            Employer = m.Part("employer", Party),
        };

    private static Renewal Renewal(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            RemovedPart = m.Identity("removedPart"),
            FittedPart = m.Identity("fittedPart"),
            Reason = m.FilledText("reason"),
            DoneBy = m.Identity("doneBy"),
            SupervisedBy = m.Identity("supervisedBy"),
            DoneOn = m.Date("doneOn"),
            RetiedBy = m.Identity("retiedBy"),
        };

    private static Remedy Remedy(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            What = m.FilledText("what"),
            DoneBy = m.FilledText("doneBy"),
            DoneOn = m.Date("doneOn"),
            Evidence = m.FilledText("evidence"),
        };

    private static Release Release(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            Document = m.Marking("document"),
            By = m.Identity("by"),
            On = m.Date("on"),
            Grounds = m.FilledText("grounds"),
            WithdrawnOn = m.Date("withdrawnOn"),
            Because = m.WordOnce("because", Words.ReleaseReasons),
        };

    private static Disposal Disposal(Members m) =>
        new()
        {
            Item = m.Identity("item"),
            Action = m.Word("action", Words.DisposalActions),
            By = m.FilledText("by"),
            On = m.Date("on"),
        };
}
