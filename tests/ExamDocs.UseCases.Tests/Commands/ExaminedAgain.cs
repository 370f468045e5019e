using ExamDocs.Core;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>An item of a list taken over, examined without a fault a month later.</summary>
internal static class ExaminedAgain
{
    public static Outcome Outcome(ListFile list, string id, bool released)
    {
        var day = ListFile.AsOf.PlusDays(30);
        var record = list.Record();
        var item = record.Items.Single(i => i.Id == id);
        var examination = new Examination
        {
            Item = id,
            Examiner = "ex1",
            Basis = Basis.SixMonth,
            Conclusion = Conclusion.Fit,
            Observations =
            [
                .. Catalogue
                    .Find(item.Category)!
                    .Criteria.Select(c => new Observation
                    {
                        Criterion = c.Id,
                        StateAsTyped = "clear",
                        State = ObservedState.Clear,
                    }),
            ],
        };
        var release = new Release
        {
            Item = id,
            By = "ex1",
            On = day,
            WithdrawnOn = record.Examinations.Single(e => e.Item == id).ExaminedOn,
            Because = ReleaseReason.ExaminedAgain,
            Grounds = "Examined again in every criterion and found sound.",
        };
        var examined = record with
        {
            Visit = record.Visit with { Reference = "V-1", Regime = "gb-loler", ExaminedOn = day, ReportedOn = day },
            People =
            [
                new Person
                {
                    Id = "ex1",
                    Name = "A. Alder",
                    Address = "1 Ash Row",
                    Qualifications = "none",
                    SelfEmployed = true,
                },
            ],
            Examinations = [.. record.Examinations, examination],
            Releases = released ? [release] : [],
        };
        return Determine.Visit(examined, [], History.None, day).Items.Single(i => i.Item.Id == id).Outcome;
    }
}
