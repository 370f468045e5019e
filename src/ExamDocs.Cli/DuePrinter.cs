using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Registered;
using NodaTime.Text;

namespace ExamDocs.Cli;

/// <summary>
/// Prints what falls due, a line for each item under its employer, premises and category. What may not be used comes first.
/// </summary>
internal static class DuePrinter
{
    public static void Print(DueList list, IReadOnlyList<ProposedVisit> visits, TextWriter output)
    {
        if (list.Apart.Count > 0)
            output.WriteLine(Screen.Say($"NOT TO BE USED, whatever falls due when:"));
        Print(list.Apart, output);
        if (list.Due.Count > 0)
            output.WriteLine(Screen.Say($"Falls due from {list.From} to {list.To}:"));
        Print(list.Due, output);
        if (visits.Count > 0)
            output.WriteLine(Screen.Say($"Visits proposed, each on its day or before it:"));
        foreach (var visit in visits)
            output.WriteLine($"  {Screen.Say(Line(visit))}");
        output.WriteLine(Screen.Say($"From {list.From} to {list.To}: {list.Due.Count} to be examined; {list.Apart.Count} not to be used."));
    }

    private static void Print(IEnumerable<DueItem> items, TextWriter output)
    {
        foreach (var place in items.GroupBy(i => i.At.Key, StringComparer.Ordinal))
        {
            output.WriteLine($"  {Name(place.First().At)}");
            foreach (var category in place.GroupBy(i => i.Category, StringComparer.Ordinal))
            {
                output.WriteLine($"    {category.Key ?? Screen.Say(NotRecorded)}");
                foreach (var item in category)
                    output.WriteLine($"      {Line(item)}");
            }
        }
    }

    private static Message NotRecorded => $"not recorded";

    private static string Name(DuePlace at) => $"{at.Employer ?? Screen.Say(NotRecorded)}, {at.Premises ?? Screen.Say(NotRecorded)}";

    private static string Line(DueItem item)
    {
        var day = item.FallsDue is { } due ? LocalDatePattern.Iso.Format(due) : "----------";
        var serial = item.Serial is null ? "" : Screen.Say($", serial {item.Serial}");
        var early =
            item.NextBy is { } next && item.FallsDue < next ? Screen.Say($"; next examination by {next}, not to be used so long") : "";
        var against = item.Standing is Standing.InService ? "" : $"  {Screen.Say(item.Why)}";
        return $"{day}  {item.Id ?? Screen.Say($"(no id)")}{serial}{early}{against}";
    }

    private static Message Line(ProposedVisit visit)
    {
        Message items = visit.Items.Count == 1 ? (Message)$"1 item" : $"{visit.Items.Count} items";
        Message? time = visit.Minutes > 0 ? (Message)$"{visit.Minutes / 60} h {visit.Minutes % 60} min" : null;
        Message? unknown =
            visit.WithoutFigure.Count > 0
                ? (Message)$"no figure for {string.Join(", ", visit.WithoutFigure.Select(c => c.Length > 0 ? c : Screen.Say(NotRecorded)))}"
                : null;
        return $"{LocalDatePattern.Iso.Format(visit.By)}  {Name(visit.At)}: {Message.Join("; ", items, time, unknown)}";
    }
}
