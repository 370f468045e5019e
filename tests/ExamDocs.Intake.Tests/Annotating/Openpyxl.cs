using System.Diagnostics;
using System.Text.Json.Nodes;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>A library of another language that writes and reads workbooks, run as a process of its own.</summary>
internal static class Openpyxl
{
    private const string Python = "/usr/bin/python3";

    private static readonly Lazy<bool> Installed = new(() => File.Exists(Python) && Run("-c", "import openpyxl").Code == 0);

    public static void SkipWhereMissing() => Assert.SkipUnless(Installed.Value, "python3-openpyxl is not installed here");

    public static byte[] Make() =>
        InFolder(folder =>
        {
            var file = Path.Combine(folder, "kit.xlsx");
            var run = Run(Script("openpyxl_make.py"), file);
            Assert.True(run.Code == 0, run.Error);
            return File.ReadAllBytes(file);
        });

    public static JsonNode Look(byte[] workbook) =>
        InFolder(folder =>
        {
            var file = Path.Combine(folder, "kit.xlsx");
            File.WriteAllBytes(file, workbook);
            var run = Run(Script("openpyxl_look.py"), file);
            Assert.True(run.Code == 0, run.Error);
            return JsonNode.Parse(run.Out)!;
        });

    private static string Script(string name) => Path.Combine(AppContext.BaseDirectory, "Annotating", name);

    private static T InFolder<T>(Func<string, T> run)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-openpyxl");
        try
        {
            return run(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (int Code, string Out, string Error) Run(params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(Python, arguments)
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
