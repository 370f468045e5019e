using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>Slips that a rule finds only with the history of the items.</summary>
internal static class RemembersCases
{
    private static Action<System.Text.Json.Nodes.JsonNode> Without(string pointer) => RuleCase.Without(pointer);

    public static RuleCase[] All =>
        [
            new("IDN011", "what has the helmet's serial was withdrawn under another id", ["/items/3/id"], _ => { })
            {
                History = History.None with
                {
                    Questions = [new IdentityQuestion("HEL-1", "HEL-OLD", new(2025, 9, 1), EarlierState.Withdrawn)],
                },
            },
            new("IDN011", "the helmet's serial was another when it was destroyed", ["/items/3/serial"], _ => { })
            {
                History = History.None with
                {
                    Questions =
                    [
                        new IdentityQuestion("HEL-1", "HEL-1", new(2025, 9, 1), EarlierState.Destroyed)
                        {
                            Member = "serial",
                            Here = "K-1",
                            There = "K-2",
                        },
                    ],
                },
            },
            new("IDN012", "the helmet was written otherwise before", ["/items/3/serial"], _ => { })
            {
                History = History.None with { Respellings = [new Respelling("HEL-1", "serial", "k 1")] },
            },
            new("IDN013", "nothing tells the two apart", ["/items/3/notTheSameAs/0"], _ => { })
            {
                History = History.None with
                {
                    AnswerFaults = [new AnswerFault("HEL-1", "/notTheSameAs/0", AnswerFaultKind.NothingDiffers)],
                },
            },
            new("IDN014", "no earlier record has the id", ["/items/3/formerly"], _ => { })
            {
                History = History.None with { AnswerFaults = [new AnswerFault("HEL-1", "/formerly", AnswerFaultKind.Unknown)] },
            },
            new("IDN015", "an earlier version has one more", ["/visit/reference"], _ => { })
            {
                History = History.None with { LeftOut = ["HEL-2"] },
            },
            new("REN012", "the bridge was on another harness before", ["/items/1/fittedTo"], _ => { })
            {
                History = History.None with { Fittings = [new PastFitting("BRG-1", "HAR-9", new(2026, 1, 15), FittingWord.WasOn)] },
            },
            new(
                "REN005",
                "another record tells that the bridge was taken off",
                ["/items/1/fittedTo", "/items/1/fittedTo"],
                Without("/renewals/0")
            )
            {
                History = History.None with { Fittings = [new PastFitting("BRG-1", "HAR-1", new(2026, 1, 15), FittingWord.TakenOff)] },
            },
            new("DAT017", "the register knows a later examination of the helmet", ["/items/3/lastExamined"], _ => { })
            {
                History = History.None with { Examinations = [Past("HEL-1", new(2026, 1, 15))] },
            },
            new(
                "DAT017",
                "none is typed, for it is the first use",
                ["/items/3/lastExamined"],
                RuleCase.All(RuleCase.Without("/items/3/lastExamined"), RuleCase.With("/examinations/3/basis", "\"first-use\""))
            )
            {
                History = History.None with { Examinations = [Past("HEL-1", new(2026, 1, 15))] },
            },
        ];

    public static PastExamination Past(string item, LocalDate on) =>
        new(
            item,
            on,
            "R-2026-000001",
            new Examination
            {
                Item = item,
                ExaminedOn = on,
                Conclusion = Conclusion.Fit,
            }
        );
}
