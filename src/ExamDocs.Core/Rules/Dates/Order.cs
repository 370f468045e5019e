using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Rules.Dates;

/// <summary>Whether two dates stand in an order that cannot be, whichever of their days a month or year means.</summary>
internal static class Order
{
    public static bool IsImpossible(PartialDate? earlier, PartialDate? later) =>
        earlier is not null && later is not null && earlier.Earliest > later.Latest;

    public static bool IsImpossible(PartialDate? earlier, LocalDate? later) =>
        earlier is not null && later is not null && earlier.Earliest > later;
}
