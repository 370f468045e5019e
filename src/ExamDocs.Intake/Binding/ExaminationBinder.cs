using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Binding;

/// <summary>Binds one examination with all that belongs to it.</summary>
internal static class ExaminationBinder
{
    public static Examination Examination(Members m)
    {
        var examinedOn = m.Date("examinedOn", limits: true);
        return new Examination
        {
            Item = m.Identity("item"),
            Examiner = m.Identity("examiner"),
            Author = m.Identity("author"),
            AuthenticatedBy = m.Identity("authenticatedBy"),
            Regime = m.Identity("regime"),
            Basis = m.Word("basis", Words.Bases),
            Scheme = m.Part("scheme", s => new Scheme
            {
                Reference = s.FilledText("reference"),
                Author = s.FilledText("author"),
                Months = s.Whole("months", 1, 120, limits: true),
            }),
            Event = m.Part("event", e => new ExceptionalEvent { What = e.FilledText("what"), On = e.Date("on") }),
            ExaminedOn = examinedOn,
            ExaminedOnUnreadable = examinedOn is null && m.IsTyped("examinedOn"),
            NextBy = m.Date("nextBy", limits: true),
            Observations = m.List("observations", Observation),
            Diameters = m.List("diameters", Station),
            Tests = m.List("tests", t => new TestMade { Description = t.FilledText("description"), Result = t.FilledText("result") }),
            Defects = m.List("defects", Defect),
            Exposure = m.Part("exposure", e => new Exposure
            {
                Hardware = e.Text("hardware"),
                Ground = e.Text("ground"),
                UserMassKg = e.Number("userMassKg", 1, 1_000),
                Use = e.Text("use"),
            }),
            Conclusion = m.WordAsTyped("conclusion", Words.Conclusions, beginning: Adverse.Conclusion).Value,
        };
    }

    private static Observation Observation(Members m)
    {
        var (typed, state) = m.WordAsTyped("state", Words.States, listed: false, beginning: Adverse.State);
        // Where no note is needed, what was typed is kept as it is.
        var isNoteNeeded = state is ObservedState.Noted or ObservedState.Doubt or ObservedState.Defect;
        var note = isNoteNeeded ? m.FilledText("note") : m.Text("note");
        if (state is { } answered && note is not null && AnswerNote.TakesBack(Words.States.WordFor(answered), note))
        {
            m.Report(
                AnswerRules.TwoAnswers,
                $"{m.Pointer}/state",
                $"'{TextGuard.Cut(typed!, Members.MostShown)}' with the note '{TextGuard.Cut(note, Members.MostShown)}' is two answers"
            );
            (typed, state, note) = (null, null, $"{typed}: {note}");
        }
        return new Observation
        {
            Criterion = m.Identity("criterion"),
            StateAsTyped = typed is null ? null : TextGuard.Cut(typed, TextGuard.MaxAnswer),
            State = state,
            Note = note ?? (Adverse.IsMoreThanTheWord(typed) ? typed : null),
            Photo = m.Text("photo"),
        };
    }

    private static DiameterStation Station(Members m) =>
        new() { PositionMm = m.Number("positionMm", 0, 1_000_000), ReadingsMm = m.Numbers("readingsMm", 0.01m, 1_000) };

    private static Defect Defect(Members m) =>
        new()
        {
            Criterion = m.Identity("criterion"),
            Part = m.FilledText("part"),
            Description = m.FilledText("description"),
            Danger = m.Word("danger", Words.Dangers),
            BecomesDangerOn = m.Date("becomesDangerOn", limits: true),
            Remedy = m.FilledText("remedy"),
            ImminentRisk = m.Flag("imminentRisk"),
            Notified = m.Part("notified", n => new Notification
            {
                Whom = n.FilledText("whom"),
                How = n.FilledText("how"),
                On = n.Date("on"),
            }),
        };
}
