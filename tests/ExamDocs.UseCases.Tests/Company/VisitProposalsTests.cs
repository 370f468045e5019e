using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Company;

/// <summary>Visits are proposed by a rule that never moves anything later than its day.</summary>
public sealed class VisitProposalsTests
{
    private const int Fleets = 10_000;

    private static readonly Dictionary<string, int> Minutes = new(StringComparer.Ordinal) { ["connector"] = 6, ["harness"] = 20 };

    [Fact]
    public void The_first_due_sets_the_day_and_takes_what_falls_due_soon_after_at_its_place()
    {
        var visits = VisitProposals.Of(
            [
                Item("A", "2026-11-30", "yard"),
                Item("B", "2026-11-02", "yard"),
                Item("C", "2026-12-01", "yard"),
                Item("D", "2026-11-02", "depot"),
            ],
            togetherDays: 28,
            Minutes
        );
        Assert.Equal(
            ["2026-11-02 depot D", "2026-11-02 yard B A", "2026-12-01 yard C"],
            visits.Select(v =>
                FormattableString.Invariant($"{v.By:uuuu-MM-dd} {v.At.Premises} {string.Join(' ', v.Items.Select(i => i.Id))}")
            )
        );
    }

    [Fact]
    public void The_time_is_that_of_the_users_figures_and_what_has_none_is_named()
    {
        var visit = Assert.Single(
            VisitProposals.Of(
                [
                    Item("A", "2026-11-02", "yard"),
                    Item("B", "2026-11-02", "yard", "harness"),
                    Item("C", "2026-11-02", "yard", "helmet"),
                    Item("D", "2026-11-02", "yard", "helmet"),
                ],
                togetherDays: 0,
                Minutes
            )
        );
        Assert.Equal(26, visit.Minutes);
        Assert.Equal(["helmet"], visit.WithoutFigure);
    }

    [Fact]
    public void In_no_fleet_is_a_visit_after_a_due_day_or_an_item_in_none_or_two()
    {
        for (var seed = 0; seed < Fleets; seed++)
        {
            var random = new Random(seed);
            var fleet = Fleet(random);
            var together = random.Next(0, 60);
            var visits = VisitProposals.Of(fleet, together, Minutes);
            Assert.All(visits, v => Assert.All(v.Items, i =>
                {
                    Assert.InRange(i.FallsDue!.Value, v.By, v.By.PlusDays(together));
                    Assert.Equal(v.At.Key, i.At.Key);
                }));
            Assert.Equal(fleet.OrderBy(i => i.Id), visits.SelectMany(v => v.Items).OrderBy(i => i.Id));
            Assert.Equal(visits.OrderBy(v => v.By).Select(v => v.By), visits.Select(v => v.By));
            // The order in which a register gives them makes no difference.
            random.Shuffle(fleet);
            var again = VisitProposals.Of(fleet, together, Minutes);
            Assert.Equal(visits.Select(Said), again.Select(Said));
        }
    }

    private static string Said(ProposedVisit visit) =>
        FormattableString.Invariant($"{visit.By} {visit.At.Key} {visit.Minutes} {string.Join(' ', visit.Items.Select(i => i.Id))}");

    private static DueItem[] Fleet(Random random)
    {
        var (first, spread) = (new LocalDate(2026, 1, 1).PlusDays(random.Next(0, 800)), random.Next(1, 400));
        string[] categories = ["connector", "harness", "helmet"];
        return
        [
            .. Enumerable
                .Range(0, random.Next(0, 40))
                .Select(n =>
                    Item(
                        FormattableString.Invariant($"I-{n}"),
                        first.PlusDays(random.Next(spread)),
                        FormattableString.Invariant($"place {random.Next(3)}"),
                        categories[random.Next(3)]
                    )
                ),
        ];
    }

    private static DueItem Item(string id, string day, string premises, string category = "connector") =>
        Item(id, NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value, premises, category);

    private static DueItem Item(string id, LocalDate day, string premises, string category) =>
        new(id, null, category, new DuePlace("Alder Vale Ltd", premises), day, day, Standing.InService, $"fit");
}
