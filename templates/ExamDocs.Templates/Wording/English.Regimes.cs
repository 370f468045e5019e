using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    internal sealed partial class Regimes : RegimePhrases
    {
        protected override RegimeWording Unnamed =>
            WorkAtHeight with
            {
                Title = "Report of examination",
                Law = "The law this examination was made under is not recorded",
                ShortLaw = Words.Common.NotRecorded,
                Examination = "examination",
                DutyNow = "The item must not be used before the defect is put right.",
                NoticeLead =
                    "The examination found a defect that is, or could become, a danger to persons. The employer is told of "
                    + "it by this notice.",
            };

        protected override RegimeWording Added(Regime regime, string file) =>
            Periodic with
            {
                Law = $"{string.Join("; ", regime.Laws.InForce(null).Select(l => l.Cited))}. {Words.LawAndSources.Added(file)}",
                ShortLaw = $"{regime.Name} ({Words.LawAndSources.AddedShort(file)})",
                UsersOwn = Words.LawAndSources.UsersOwn,
            };
    }
}
