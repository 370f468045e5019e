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
                "What tells two items apart is a marking, or both are in the record",
                "That it is another item is easily said; somebody else must be able to see it.",
                "Name the earlier id, and say in a sentence what differs: serial number, owner's mark, date of manufacture. "
                    + "Where nothing differs, record both items.",
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
                            "it does not say which item it is not"
                        ))
                )
        );

    private static string Words(AnswerFaultKind fault) =>
        fault switch
        {
            AnswerFaultKind.NoReason => "it does not say in a sentence how the two are told apart",
            AnswerFaultKind.UnknownDocument => "the document named says nothing of that item",
            _ => "no marking differs between the two, and the other is not in this record: they are taken for one item",
        };
}
