using System.Diagnostics;
using ExamDocs.Documents.Browsing;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>A way to come by the documents.</summary>
/// <param name="Name">As printed.</param>
/// <param name="Most">The most documents that it is given: a slow one takes as long for each, however many there are.</param>
/// <param name="Needs">A command that succeeds where what it needs is installed.</param>
/// <param name="Command">
/// For the shell. VISITS is a folder of records, HTML one of pages, DRAWINGS one of what is drawn directly, OUT the folder for the PDFs.
/// </param>
internal sealed record Way(string Name, int Most, string Needs, string Command)
{
    private const string Sandbox = "$([ $(id -u) != 0 ] || echo --no-sandbox)";

    public static IReadOnlyList<Way> All { get; } =
    [
        new(
            "examdocs issue, with all that it does",
            int.MaxValue,
            "true",
            """
            XDG_DATA_HOME="$OUT"/own "$PROGRAM" issue "$VISITS"/*.json --out "$OUT" $OPTIONS
            """
        ),
        new(
            "a browser process for each file, one on each core",
            100,
            "true",
            $"""
            ls "$HTML" | xargs -P $(nproc) -I FILE "$BROWSER" --headless {Sandbox} --disable-gpu --no-pdf-header-footer \
              --print-to-pdf="$OUT"/FILE.pdf file://"$HTML"/FILE
            """
        ),
        new(
            "a loop over one page of one browser, PuppeteerSharp",
            1000,
            "true",
            """
            "$SELF" issue-loop "$HTML" "$OUT"
            """
        ),
        new(
            "WeasyPrint, a process on each core",
            200,
            "/usr/bin/python3 -c 'import weasyprint'",
            """
            for k in $(seq $(nproc)); do
              ls "$HTML" | awk "NR % $(nproc) == $k - 1" | (cd "$HTML" && /usr/bin/python3 -c '
            import sys, weasyprint
            for name in sys.stdin.read().split():
                weasyprint.HTML(name).write_pdf(sys.argv[1] + "/" + name + ".pdf")
            ' "$OUT") &
            done
            wait
            """
        ),
        new(
            "LibreOffice Writer, all files in one run",
            200,
            "ls /usr/lib/libreoffice/program/libswlo.so",
            """
            soffice --headless -env:UserInstallation=file://"$HOME"/office --convert-to pdf --outdir "$OUT" "$HTML"/*
            """
        ),
        new(
            "the floor: drawn directly with PDFsharp",
            200,
            "true",
            """
            "$SELF" issue-draw "$DRAWINGS" "$OUT"
            """
        ),
    ];

    public bool IsInstalled
    {
        get
        {
            using var asked = Process.Start(Shell($"({Needs}) >/dev/null 2>&1"))!;
            asked.WaitForExit();
            return asked.ExitCode == 0;
        }
    }

    /// <param name="variables">What stands for the folders.</param>
    /// <param name="log">Where it writes what it says.</param>
    public ProcessStartInfo Start(IReadOnlyDictionary<string, string> variables, string log)
    {
        var start = Shell($"exec >'{log}' 2>&1\n{Command}");
        foreach (var own in start.Environment.Keys.Where(k => k.StartsWith("EXAMDOCS_", StringComparison.Ordinal)).ToList())
            start.Environment.Remove(own);
        start.Environment["BROWSER"] = BrowserPath.Find();
        start.Environment["SELF"] = Environment.ProcessPath;
        foreach (var (name, value) in variables)
            start.Environment[name] = value;
        return start;
    }

    private static ProcessStartInfo Shell(string command) => new("/bin/sh", ["-c", command]);
}
