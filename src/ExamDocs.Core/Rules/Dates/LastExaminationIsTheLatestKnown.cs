using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Dates;

public sealed class LastExaminationIsTheLatestKnown : Rule<ItemCase>
{
    public LastExaminationIsTheLatestKnown()
        : base(
            new RuleInfo(
                "DAT017",
                Severity.Warning,
                "The last examination recorded is the latest that the register knows",
                "The report gives the date, the next examination is counted from it, and what the later one found is easily overlooked.",
                $"Read what the later examination found, and type its date.",
                "SI 1998/2307 Schedule 1 para 4"
            )
        ) =>
        Each(i =>
            i.Deciding.Count == 0 || Latest(i) is not { } latest || i.LastExamined?.Latest >= latest.On
                ? []
                : [new Fault("/lastExamined", Words(i, latest))]
        );

    private static EarlierExamination? Latest(ItemCase item) =>
        item.Before.LastOrDefault(e => e.Stored is not null && e.Examination.WasLookedAt);

    private static Message Words(ItemCase item, EarlierExamination latest) =>
        item.LastExamined is { } recorded
            ? (Message)$"the register knows an examination on {latest.On}{Document(latest)}, later than the last one recorded, {recorded}"
            : $"the register knows an examination on {latest.On}{Document(latest)}, and the last one is not recorded";

    private static string Document(EarlierExamination latest) => latest.Stored!.Document is { } document ? $" ({document})" : "";
}
