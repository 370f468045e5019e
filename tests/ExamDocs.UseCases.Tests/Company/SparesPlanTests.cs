using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Company;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Company;

public sealed class SparesPlanTests
{
    private static readonly LocalDate To = new(2027, 6, 30);

    [Fact]
    public void Needs_of_one_part_number_are_set_against_its_stock()
    {
        var plan = Plan(
            Stock(("SP-11", 2)),
            Need("A", "2027-03-01", "SP-11"),
            Need("B", "2027-01-01", "SP-11"),
            Need("C", "2027-02-01", "SP-11")
        );
        var order = Assert.Single(plan.Orders);
        Assert.Equal((2, 1, new LocalDate(2027, 1, 1)), (order.InStock, order.ToOrder, order.FirstBy));
        Assert.Equal(["B", "C", "A"], order.Needs.Select(n => n.Part));
    }

    [Fact]
    public void A_piece_in_stock_counts_once_and_first_where_no_other_number_will_do()
    {
        var plan = Plan(
            Stock(("X", 1), ("Y", 1)),
            Need("A", "2027-01-01", "X", "Y"),
            Need("B", "2027-02-01", "X"),
            Need("C", "2027-03-01", "Y")
        );
        Assert.Equal([("X", 1), ("X Y", 0), ("Y", 1)], plan.Orders.Select(o => (string.Join(' ', o.Permitted), o.InStock)));
        Assert.Equal(1, plan.Orders.Sum(o => o.ToOrder));
    }

    [Fact]
    public void Of_several_permitted_numbers_any_will_do()
    {
        var order = Assert.Single(
            Plan(Stock(("X", 1), ("Y", 5)), Need("A", "2027-01-01", "Y", "X"), Need("B", "2027-01-02", "X", "Y")).Orders
        );
        Assert.Equal((2, 0), (order.InStock, order.ToOrder));
    }

    /// <summary>Part numbers are compared letter by letter, as they are where a part is permitted or not.</summary>
    [Fact]
    public void Another_spelling_of_a_number_is_not_counted() =>
        Assert.Equal(1, Assert.Single(Plan(Stock(("sp-11", 9)), Need("A", "2027-01-01", "SP-11")).Orders).ToOrder);

    [Fact]
    public void A_part_without_a_permitted_number_is_named_and_never_ordered()
    {
        var plan = Plan(Stock(("SP-11", 9)), Need("A", "2027-01-01"));
        Assert.Empty(plan.Orders);
        Assert.Equal("A", Assert.Single(plan.NotRecorded).Part);
    }

    private static SparesPlan Plan(IReadOnlyDictionary<string, int> stock, params SpareNeed[] needs) =>
        SparesPlan.Of(new SpareNeeds(To, needs, []), stock);

    private static Dictionary<string, int> Stock(params (string Number, int Count)[] rows) =>
        rows.ToDictionary(r => r.Number, r => r.Count, StringComparer.Ordinal);

    private static SpareNeed Need(string part, string by, params string[] permitted) =>
        new(
            part,
            null,
            "rope-bridge",
            "H-1",
            new DuePlace("Alder Vale Ltd", "The yard"),
            NodaTime.Text.LocalDatePattern.Iso.Parse(by).Value,
            Message.AsIs("its service ends"),
            permitted
        );
}
