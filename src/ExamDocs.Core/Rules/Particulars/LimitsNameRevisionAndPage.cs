using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class LimitsNameRevisionAndPage : Rule<RowCase<MakersLimits>>
{
    public LimitsNameRevisionAndPage()
        : base(
            new RuleInfo(
                "PAR030",
                Severity.Warning,
                "Maker's limits name revision and page",
                "Makers change their limits; the revision says which of them was read.",
                $"Type the revision or date of the document and the page.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            l => l.Row.Source is { Title: not null } and ({ Revision: null } or { Page: null }),
            "/source",
            _ => $"the revision or the page of the maker's document is not recorded"
        );
}
