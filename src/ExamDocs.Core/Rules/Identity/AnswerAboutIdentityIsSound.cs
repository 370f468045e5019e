using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Identity;

public sealed class AnswerAboutIdentityIsSound : Rule<ItemCase>
{
    public AnswerAboutIdentityIsSound()
        : base(
            new RuleInfo(
                "IDN013",
                Severity.Error,
                "Two items said to differ have different markings, or are both in the record",
                "It is easy to say that it is another item; somebody else must be able to see it.",
                $"Name the earlier id, and say in a sentence what differs: serial number, owner's mark, date of manufacture. "
                    + $"Where nothing differs, record both items.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Context.History.AnswerFaults.Where(f =>
                    f.Fault is not AnswerFaultKind.Unknown
                    && i.ItemId is not null
                    && string.Equals(f.ItemId, i.ItemId, StringComparison.Ordinal)
                )
                .Select(f => new Fault(f.Path, Words(f.Fault)))
                .Concat(
                    i.Item.NotTheSameAs.Index()
                        .Where(a => a.Item.Id is null)
                        .Select(a => new Fault(
                            FormattableString.Invariant($"/notTheSameAs/{a.Index}/id"),
                            $"the id of the other item is missing"
                        ))
                )
        );

    private static Message Words(AnswerFaultKind fault) =>
        fault switch
        {
            AnswerFaultKind.NoReason => $"how the two items differ is not said in a sentence",
            AnswerFaultKind.UnknownDocument => $"the document named does not mention that item",
            _ => $"no marking of the two differs, and the other is not in this record: they count as one item",
        };
}
