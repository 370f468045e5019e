using System.Security.Cryptography;
using System.Text;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.RuleFiles;

namespace ExamDocs.UseCases.Recalling;

/// <summary>Makes the references of visits that record what a notice took out of use.</summary>
internal static class SweepReference
{
    private const int Digits = 10;

    /// <param name="notice">The notice.</param>
    /// <param name="record">The record without its reference.</param>
    public static RecallVisit Of(SafetyNotice notice, ExaminationRecord record) =>
        new(notice.Reference, NoticeOf(notice), TextOf(notice)[..Digits], Sum(JsonRecordWriter.Write(record))[..Digits]);

    /// <summary>What the sweeps of one notice share.</summary>
    public static string NoticeOf(SafetyNotice notice)
    {
        var reference = Folded.Keys(notice.Reference) is [var folded, ..] ? folded : notice.Reference;
        return Sum(Encoding.UTF8.GetBytes($"{FirmName.Fold(notice.Maker)}\n{reference}"))[..Digits];
    }

    /// <summary>SHA-256 of the notice as it is written by <see cref="SafetyNoticeWriter"/>; lower-case hexadecimal.</summary>
    public static string TextOf(SafetyNotice notice) =>
        Sum(Encoding.UTF8.GetBytes(SafetyNoticeWriter.Write(notice).ToJsonString(RuleJson.Options)));

    private static string Sum(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
