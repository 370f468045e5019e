using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Company;
using NodaTime.Text;

namespace ExamDocs.Cli;

/// <summary>Prints which parts have to be ordered, each with what it is for.</summary>
internal static class SparesPrinter
{
    public static void Print(SparesPlan plan, TextWriter output)
    {
        if (plan.NotRecorded.Count > 0)
            output.WriteLine(Screen.Say($"No permitted part number is recorded for these; ask the maker:"));
        Print(plan.NotRecorded, output);
        foreach (var order in plan.Orders)
        {
            output.WriteLine(
                Screen.Say(
                    $"{order.Name(Screen.Language)}: {order.Needs.Count} needed, {order.InStock} from stock, {order.ToOrder} to order"
                )
            );
            Print(order.Needs, output);
        }
        var needed = plan.Orders.Sum(o => o.Needs.Count) + plan.NotRecorded.Count;
        output.WriteLine(Screen.Say($"Up to {plan.To}: {needed} parts to replace; {plan.Orders.Sum(o => o.ToOrder)} to order."));
        foreach (var left in plan.LeftOut)
            output.WriteLine(Screen.Say(left.Line));
    }

    private static void Print(IEnumerable<SpareNeed> needs, TextWriter output)
    {
        foreach (var need in needs)
        {
            var on = need.Whole is { } whole ? Screen.Say($"{need.Part} on {whole}") : need.Part;
            var at = string.Join(", ", new[] { need.At.Employer, need.At.Premises }.OfType<string>());
            output.WriteLine($"  {LocalDatePattern.Iso.Format(need.By)}  {on}, {at}: {Screen.Say(need.Why)}");
        }
    }
}
