using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class MakerOfReportIsNamed : Rule<RowCase<Person>>
{
    public MakerOfReportIsNamed()
        : base(
            new RuleInfo(
                "PAR014",
                Severity.Error,
                "Every person has a name, an address and qualifications",
                "A report is worth what the person is who signs it.",
                $"Type the person's name, address and qualifications.",
                "SI 1998/2307 Schedule 1 paras 9 and 10 (from memory)"
            )
        )
    {
        Require(p => p.Row.Id, "/id", $"the person has no id");
        Require(p => p.Row.Name, "/name", $"the person's name is missing");
        Require(p => p.Row.Address, "/address", $"the person's address is missing");
        Require(p => p.Row.Qualifications, "/qualifications", $"the person's qualifications are missing");
    }
}
