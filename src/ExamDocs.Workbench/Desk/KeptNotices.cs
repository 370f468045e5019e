using System.Security.Cryptography;
using System.Text;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.Workbench.Desk;

/// <summary>A safety notice that was looked up, with the folder of its papers.</summary>
/// <param name="Id">Named by what the notice says: the same notice is kept once.</param>
/// <param name="Folder">Where it is kept.</param>
/// <param name="Notice">The notice.</param>
public sealed record KeptNotice(string Id, string Folder, SafetyNotice Notice)
{
    public string PaperFolder => Path.Combine(Folder, "papers");

    /// <summary>The records of its sweeps, the latest first.</summary>
    public IReadOnlyList<string> SweepRecords =>
        Directory.Exists(PaperFolder)
            ? [.. Directory.EnumerateFiles(PaperFolder, "recall-*.json").OrderByDescending(File.GetLastWriteTimeUtc)]
            : [];
}

/// <summary>Keeps the safety notices that were looked up.</summary>
internal sealed class KeptNotices(WorkbenchRequest request)
{
    private const string FileName = "notice.json";
    private const int Digits = 20;

    private string Root => Path.Combine(Path.GetFullPath(request.DataFolder), "recalls");

    public IReadOnlyList<KeptNotice> All =>
        Directory.Exists(Root)
            ?
            [
                .. Directory
                    .EnumerateDirectories(Root)
                    .Select(f => Find(Path.GetFileName(f)))
                    .OfType<KeptNotice>()
                    .OrderByDescending(n => n.Notice.On),
            ]
            : [];

    /// <summary>Null where there is none of this id, or its file can no longer be read.</summary>
    public KeptNotice? Find(string id)
    {
        var folder = Path.Combine(Root, id);
        return
            id.Length == Digits
            && id.All(char.IsAsciiHexDigitLower)
            && File.Exists(Path.Combine(folder, FileName))
            && RuleFile.Recall(File.ReadAllBytes(Path.Combine(folder, FileName))).Value is { } notice
            ? new(id, folder, notice)
            : null;
    }

    public KeptNotice Keep(SafetyNotice notice)
    {
        var bytes = Encoding.UTF8.GetBytes(SafetyNoticeWriter.Write(notice).ToJsonString(RuleJson.Options));
        var id = Convert.ToHexStringLower(SHA256.HashData(bytes))[..Digits];
        var folder = Path.Combine(Root, id);
        if (!File.Exists(Path.Combine(folder, FileName)))
            OutputGuard.NewFilesOnly.Write(Path.Combine(folder, FileName), bytes);
        return new(id, folder, notice);
    }
}
