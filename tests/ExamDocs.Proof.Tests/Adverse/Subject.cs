using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.Generating;
using NodaTime;

namespace ExamDocs.Proof.Tests.Adverse;

/// <summary>One item of a record with its examination and limits, to be changed.</summary>
internal sealed class Subject
{
    public required Item Item { get; set; }

    public required Examination Examination { get; set; }

    public required MakersLimits Limits { get; set; }

    /// <summary>The limits of what it is fitted to; null where it is fitted to nothing.</summary>
    public Subject? Whole { get; init; }

    public required LocalDate On { get; init; }

    public bool HasOpenHold { get; set; }

    public void Answer(string criterion, ObservedState state) =>
        Examination = Examination with
        {
            Observations =
            [
                .. Examination.Observations.Where(o => o.Criterion != criterion),
                new Observation
                {
                    Criterion = criterion,
                    State = state,
                    StateAsTyped = "typed",
                    Note = "seen",
                },
            ],
        };

    public void Enter(string criterion, Danger? danger, LocalDate? on, bool imminent, string? remedy) =>
        Examination = Examination with
        {
            Defects =
            [
                .. Examination.Defects,
                new Defect
                {
                    Criterion = criterion,
                    Part = "left",
                    Description = "worn",
                    Danger = danger,
                    BecomesDangerOn = on,
                    Remedy = remedy,
                    ImminentRisk = imminent,
                },
            ],
        };

    public PartialDate DaysAgo(int days) => PartialDate.Of(On.PlusDays(-days));

    public static int Past(Dice dice) => dice.One(1, 1, 2, dice.Between(3, 900));
}
