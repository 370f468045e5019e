using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Recalling;

/// <summary>The record of a sweep (examdocs-recall-sweep/1): the notice, the day, and what was done about each item and why.</summary>
internal static class SweepFile
{
    public const string FormatName = OwnJson.RecallSweep;

    /// <param name="notice">The notice.</param>
    /// <param name="items">What was done about each item, and the numbers of its papers.</param>
    /// <param name="register">Identity of the register.</param>
    /// <param name="today">The day of the sweep.</param>
    public static byte[] Write(
        SafetyNotice notice,
        IEnumerable<(PlannedItem Item, IReadOnlyList<string> Papers)> items,
        string register,
        LocalDate today
    ) =>
        Encoding.UTF8.GetBytes(
            JsonSerializer.Serialize(
                new
                {
                    Format = FormatName,
                    Register = register,
                    On = today,
                    NoticeSha256 = SweepReference.TextOf(notice),
                    Notice = SafetyNoticeWriter.Write(notice),
                    Items = items.Select(i => ItemOf(i.Item, i.Papers)),
                },
                RuleJson.Options
            ) + "\n"
        );

    /// <summary>Writes it under a name that is free in the folder.</summary>
    /// <returns>The name of the file.</returns>
    public static string Put(string folder, SafetyNotice notice, byte[] content, LocalDate today)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"recall-{SweepReference.NoticeOf(notice)}-{today:uuuu'-'MM'-'dd}");
        for (var n = 1; ; n++)
        {
            var file = n == 1 ? $"{name}.json" : string.Create(CultureInfo.InvariantCulture, $"{name}-{n}.json");
            try
            {
                OutputGuard.NewFilesOnly.Write(Path.Combine(folder, file), content);
                return file;
            }
            catch (OutputRefusedException) when (File.Exists(Path.Combine(folder, file)))
            {
                // The next number.
            }
        }
    }

    /// <summary>Whether the folder has the record of a sweep of this notice already.</summary>
    public static bool IsIn(string folder, SafetyNotice notice, string register) =>
        Directory.Exists(folder)
        && Directory
            .EnumerateFiles(folder, $"recall-{SweepReference.NoticeOf(notice)}-*.json")
            .Any(f => OwnJson.Is(File.ReadAllBytes(f), FormatName, register));

    private static object ItemOf(PlannedItem planned, IReadOnlyList<string> papers)
    {
        var (item, row) = (planned.Item, planned.Item.Item);
        return new
        {
            row.Id,
            item.OtherIds,
            item.Owner,
            row.Maker,
            row.Model,
            row.PartNumber,
            row.Serial,
            Manufactured = row.Manufactured?.ToString(),
            item.Verdict,
            Reasons = item.Reasons.Select(r => r.Text),
            StoodBefore = item.Standing,
            Why = item.Why?.Text,
            planned.Action,
            Said = planned.Said?.Text,
            Documents = papers,
        };
    }
}
