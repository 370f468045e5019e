using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.RuleFiles;

namespace ExamDocs.UseCases.Recalling;

/// <summary>
/// The reference of a visit that records what a notice took out of use. Its end names the notice, its text and the items, so that a
/// register itself knows which items a notice has taken out already.
/// </summary>
/// <param name="Notice">Of maker and reference, however they are spelt.</param>
/// <param name="Text">Of all that the notice says: a notice that names more kit under the same reference is another text.</param>
/// <param name="Items">Of the record.</param>
internal sealed partial record SweepReference(string Notice, string Text, string Items)
{
    private const int Digits = 10;

    /// <param name="notice">The notice.</param>
    /// <param name="record">The record without its reference.</param>
    public static SweepReference Of(SafetyNotice notice, ExaminationRecord record) =>
        new(NoticeOf(notice), TextOf(notice)[..Digits], Sum(JsonRecordWriter.Write(record))[..Digits]);

    /// <summary>What the sweeps of one notice share.</summary>
    public static string NoticeOf(SafetyNotice notice)
    {
        var reference = Folded.Keys(notice.Reference) is [var folded, ..] ? folded : notice.Reference;
        return Sum(Encoding.UTF8.GetBytes($"{FirmName.Fold(notice.Maker)}\n{reference}"))[..Digits];
    }

    /// <summary>SHA-256 of the notice as it is written by <see cref="SafetyNoticeWriter"/>; lower-case hexadecimal.</summary>
    public static string TextOf(SafetyNotice notice) =>
        Sum(Encoding.UTF8.GetBytes(SafetyNoticeWriter.Write(notice).ToJsonString(RuleJson.Options)));

    /// <summary>The sweep that a visit of this reference records; null for any other visit.</summary>
    public static SweepReference? Read(string? reference) =>
        reference is not null && End().Match(reference) is { Success: true, Groups: var found }
            ? new(found["notice"].Value, found["text"].Value, found["items"].Value)
            : null;

    public string In(SafetyNotice notice) =>
        string.Create(CultureInfo.InvariantCulture, $"{notice.Reference} recall {Notice}-{Text}-{Items}");

    private static string Sum(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    [GeneratedRegex(@" recall (?<notice>[0-9a-f]{10})-(?<text>[0-9a-f]{10})-(?<items>[0-9a-f]{10})$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex End();
}
