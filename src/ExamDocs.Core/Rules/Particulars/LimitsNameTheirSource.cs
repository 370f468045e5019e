using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class LimitsNameTheirSource : Rule<RowCase<MakersLimits>>
{
    public LimitsNameTheirSource()
        : base(
            new RuleInfo(
                "PAR029",
                Severity.Error,
                "Maker's limits name maker, model and the document they come from",
                "A limit without its source is hearsay; one without a model applies to nothing.",
                $"Type the maker, the model and the title of the maker's document.",
                "common practice, no source"
            )
        )
    {
        Require(l => l.Row.Maker, "/maker", $"the limits do not name the maker");
        Require(l => l.Row.Model, "/model", $"the limits do not name the model");
        Forbid(
            l => l.Row.Source?.Title is null && l.Row.Unobtainable is null,
            "/source/title",
            _ => $"the document that the limits come from is not named"
        );
    }
}
