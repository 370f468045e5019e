using ExamDocs.Core.Records;

namespace ExamDocs.Intake;

/// <summary>The tree of an examination.</summary>
internal static class ExaminationTree
{
    /// <summary>Without it, an examination whose date could not be read would pass for one of the visit's date.</summary>
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
