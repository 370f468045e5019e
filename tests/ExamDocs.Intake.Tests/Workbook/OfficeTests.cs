using System.Diagnostics;
using ExamDocs.Core.Criteria;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A spreadsheet program opens the capture workbook, and what it saves is the same record.</summary>
public sealed class OfficeTests
{
    private static readonly string[] Places = ["/usr/bin/soffice", "/usr/local/bin/soffice", "/opt/libreoffice/program/soffice"];

    [Fact]
    public void LibreOffice_opens_it_and_saves_the_same_record()
    {
        var program = Places.FirstOrDefault(File.Exists);
        Assert.SkipWhen(program is null, "LibreOffice is not installed here");
        var folder = Directory.CreateTempSubdirectory("examdocs-office");
        try
        {
            var written = RoundTripTests.Written(FullRecord.Make(), [Catalogue.Find("helmet")!], forNextVisit: false);
            var ours = Path.Combine(folder.FullName, "kit.xlsx");
            File.WriteAllBytes(ours, written.ToArray());
            Convert(program, folder.FullName, ours);
            using var saved = File.OpenRead(Path.Combine(folder.FullName, "saved", "kit.xlsx"));
            var again = WorkbookReader.Read(saved, "kit.xlsx");
            Assert.Null(again.Unreadable);
            Assert.Empty(again.Findings);
            Assert.Equal(TreeText.Of(WorkbookReader.Read(written, "kit.xlsx").Root!), TreeText.Of(again.Root!));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Convert(string? program, string folder, string file)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program!)
            {
                ArgumentList =
                {
                    $"-env:UserInstallation=file://{folder}/profile",
                    "--headless",
                    "--convert-to",
                    "xlsx:Calc MS Excel 2007 XML",
                    "--outdir",
                    Path.Combine(folder, "saved"),
                    file,
                },
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        if (!process.WaitForExit(TimeSpan.FromMinutes(3)))
            process.Kill(entireProcessTree: true);
        Assert.True(process.HasExited && process.ExitCode == 0, "LibreOffice did not convert the workbook");
    }
}
