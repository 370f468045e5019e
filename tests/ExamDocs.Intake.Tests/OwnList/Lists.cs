using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Taking;
using NodaTime;

namespace ExamDocs.Intake.Tests.OwnList;

/// <summary>Short lists, typed as separated values.</summary>
internal static class Lists
{
    public static readonly LocalDate AsOf = new(2026, 4, 1);

    public static ListBook Read(params string[] lines) =>
        ListBookReader.Read(Encoding.UTF8.GetBytes(string.Join('\n', lines)), "our kit.csv");

    public static ListMapping Mapping(params string[] lines) => new(Read(lines), KnownRules.BuiltIn, null);

    public static TakenList Take(params string[] lines) => TakeList.Of(Mapping(lines), AsOf);
}
