using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Rules.Dates;

/// <summary>Finds two dates in an impossible order, whichever day a month or a year alone may mean.</summary>
internal static class Order
{
    public static bool IsImpossible(PartialDate? earlier, PartialDate? later) =>
        earlier is not null && later is not null && earlier.Earliest > later.Latest;

    public static bool IsImpossible(PartialDate? earlier, LocalDate? later) =>
        earlier is not null && later is not null && earlier.Earliest > later;
}
