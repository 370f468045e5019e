using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>Slips that only show against what is known from before.</summary>
internal static class RemembersCases
{
    public static RuleCase[] All =>
    [
        Withdrawn("the helmet's marks were withdrawn under another id", w => w),
        Withdrawn("written in small letters then", w => w with { Maker = "fenwright", Serial = "k-1" }),
        new("DAT017", "the register knows a later examination of the helmet", ["/items/3/lastExamined"], _ => { })
        { History = History.None with { Examinations = [Past("HEL-1", new(2026, 1, 15))] } },
        new("DAT017", "none is typed, for it is the first use", ["/items/3/lastExamined"], RuleCase.All(
            RuleCase.Without("/items/3/lastExamined"), RuleCase.With("/examinations/3/basis", "\"first-use\"")))
        { History = History.None with { Examinations = [Past("HEL-1", new(2026, 1, 15))] } },
    ];

    public static PastWithdrawal OfHelmet { get; } = new("HEL-OLD", "Q-2025-000004", new LocalDate(2025, 9, 1), ["W1"], NeverReleasable: false)
    {
        Maker = "Fenwright",
        Model = "K1",
        Serial = "K-1",
    };

    public static PastExamination Past(string item, LocalDate on) =>
        new(item, on, "R-2026-000001", new Examination { Item = item, ExaminedOn = on, Conclusion = Conclusion.Fit });

    private static RuleCase Withdrawn(string what, Func<PastWithdrawal, PastWithdrawal> change) =>
        new("IDN010", what, ["/items/3/serial"], _ => { }) { History = new History([change(OfHelmet)]) };
}
