using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ExamDocs.Core.Findings;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>
/// Writes what falls due as a calendar (RFC 5545): an all-day event for each employer, premises and day. An event keeps its id from one
/// file to the next, and its sequence grows with the register's log, so that a calendar which takes in a later file updates what it has.
/// A day on which nothing falls due any more comes as cancelled.
/// </summary>
internal static class DueCalendar
{
    private const string Product = "-//ExamDocs//Due//EN";

    public static string Of(DueList list, MessageLanguage language)
    {
        var calendar = new Ical.Net.Calendar { ProductId = Product };
        var groups = list
            .Due.GroupBy(i => (i.At.Key, Day: i.FallsDue!.Value))
            .OrderBy(g => g.Key.Day)
            .ThenBy(g => g.Key.Key, StringComparer.Ordinal);
        foreach (var group in groups)
        {
            var items = group.ToList();
            var due = Event(list, items[0].At, group.Key.Day);
            due.Summary = Plain(Summary(items.Count, items[0].At).In(language));
            due.Description = string.Join('\n', items.Select(i => Plain(Line(i).In(language))));
            due.Status = EventStatus.Confirmed;
            calendar.Events.Add(due);
        }
        foreach (var (at, day) in list.NoLonger)
        {
            var gone = Event(list, at, day);
            gone.Summary = Plain(Summary(0, at).In(language));
            gone.Status = EventStatus.Cancelled;
            calendar.Events.Add(gone);
        }
        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("no calendar was written");
    }

    private static CalendarEvent Event(DueList list, DuePlace at, LocalDate day)
    {
        var next = day.PlusDays(1);
        return new CalendarEvent
        {
            Uid = Id(list.Register, at, day),
            DtStamp = new CalDateTime(list.AsOf.ToDateTimeUnspecified(), "UTC"),
            Sequence = (int)Math.Min(list.Version, int.MaxValue),
            // Days without a time; the end is the day after (RFC 5545, 3.6.1).
            Start = new CalDateTime(day.Year, day.Month, day.Day),
            End = new CalDateTime(next.Year, next.Month, next.Day),
            Location = at.Premises is null ? null : Plain(at.Premises),
            Transparency = TransparencyType.Transparent,
        };
    }

    private static string Id(string register, DuePlace at, LocalDate day)
    {
        var of = string.Create(CultureInfo.InvariantCulture, $"{register}\n{at.Key}\n{day:uuuu-MM-dd}");
        return $"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(of)).AsSpan(0, 16))}@examdocs";
    }

    private static Message Summary(int items, DuePlace at) =>
        items == 1
            ? (Message)$"Examination due: 1 item, {at.Employer} {at.Premises}"
            : $"Examination due: {items} items, {at.Employer} {at.Premises}";

    private static Message Line(DueItem item) =>
        item.Serial is { } serial ? (Message)$"{item.Id}, serial {serial} ({item.Category})" : $"{item.Id} ({item.Category})";

    /// <summary>Without control characters, which no calendar text may hold (RFC 5545, 3.3.11).</summary>
    private static string Plain(string text) => string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
}
