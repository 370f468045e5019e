using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml;
using ExamDocs.Benchmarks;
using ExamDocs.Benchmarks.Issuing;
using ExamDocs.Benchmarks.Size;
using ExamDocs.Core;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Browsing;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;
using NodaTime;
using PuppeteerSharp;
using Browser = ExamDocs.Documents.Browsing.Browser;

// Each measure stands beside a peer over the same input in the same run; read the ratio, not the milliseconds.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
if (args is ["hostile-one", var hostile])
{
    HostileRun.One(hostile);
    return 0;
}
if (args is ["hostile", .. var only])
    return HostileRun.All(string.Join(' ', only)) == 0 ? 0 : 1;
if (args is ["rows-one", var how, var file])
{
    RowsRun.One(how, file);
    return 0;
}
if (args is ["rows"])
{
    RowsRun.All();
    return 0;
}
if (args is ["pack-one", var packed])
{
    await PackRun.OneAsync(packed);
    return 0;
}
if (args is ["pack"])
{
    PackRun.All(Root());
    return 0;
}
if (args is ["issue-loop", var html, var printedTo])
{
    await PrintLoop.AllAsync(html, printedTo);
    return 0;
}
if (args is ["issue-draw", var drawings, var drawnTo])
{
    DrawnDirectly.All(drawings, drawnTo);
    return 0;
}
if (args is ["issue", .. var asked])
{
    var rounds = asked is [var first, ..] ? int.Parse(first, NumberStyles.None, CultureInfo.InvariantCulture) : 5;
    var cases = asked.Length > 1 ? asked[1..] : ["report:1", "report:10", "report:100", "due-label:100", "schedule:2000"];
    await IssueRun.AllAsync(Root(), rounds, [.. cases.Select(IssueCase.Parse)]);
    return 0;
}
if (args is ["size-make", var sizeAddress, var sizeDocuments])
{
    GeneratedRegister.Make(sizeAddress, int.Parse(sizeDocuments, CultureInfo.InvariantCulture));
    return 0;
}
if (args is ["size", var measuredAddress, .. var timed])
{
    SizeRun.All(measuredAddress, timed);
    return 0;
}
if (args is ["size-due", var dueAddress])
{
    SizeRun.Due(dueAddress);
    return 0;
}
if (args is ["size-clients", var clientsAddress, var clients, var seconds])
{
    return ClientsRun.All(
        clientsAddress,
        int.Parse(clients, CultureInfo.InvariantCulture),
        int.Parse(seconds, CultureInfo.InvariantCulture)
    );
}
if (args is ["due-one", var dueRegister])
{
    DueRun.One(dueRegister);
    return 0;
}
if (args is ["due-make", var madeRegister, var many])
{
    DueRun.Make(Root(), madeRegister, int.Parse(many, CultureInfo.InvariantCulture));
    return 0;
}
if (args is ["due"])
{
    DueRun.All(Root(), 10_000, 100_000);
    return 0;
}
if (args is ["check", .. var sizes])
{
    CheckRun.All(Root(), sizes is [var size] ? int.Parse(size, CultureInfo.InvariantCulture) : 5_000);
    return 0;
}
if (args is ["check-make", var checkFolder, var checkItems])
{
    CheckRun.Write(Root(), checkFolder, int.Parse(checkItems, CultureInfo.InvariantCulture));
    return 0;
}
if (args is ["workbench"])
{
    await WorkbenchRun.AllAsync(Root());
    return 0;
}
var examples = Path.Combine(Root(), "examples");
var today = new LocalDate(2026, 5, 12);
Console.WriteLine($"{"what", -46}{"ours ms", 10}{"peer ms", 10}{"ratio", 8}  peer");

var json = RepeatedRecord.Of(JsonNode.Parse(File.ReadAllText(Path.Combine(examples, "visit.json")))!.AsObject(), times: 20);
Compare(
    "read, check and determine 1,240 items",
    5,
    () =>
    {
        var r = JsonRecordReader.Read(json, "visit.json");
        Determine.Visit(r.Record!, r.Findings, History.None, today);
    },
    () =>
    {
        using var d = JsonDocument.Parse(json);
    },
    "JsonDocument.Parse alone"
);

var unmeasured = RepeatedRecord.Of(
    WithoutDiameters(JsonNode.Parse(File.ReadAllText(Path.Combine(examples, "visit.json")))!.AsObject()),
    times: 20
);
Compare(
    "the same, against itself without measurements",
    9,
    () =>
    {
        var r = JsonRecordReader.Read(json, "visit.json");
        Determine.Visit(r.Record!, r.Findings, History.None, today);
    },
    () =>
    {
        var r = JsonRecordReader.Read(unmeasured, "visit.json");
        Determine.Visit(r.Record!, r.Findings, History.None, today);
    },
    "the same record with every diameter taken out"
);

var workbook = File.ReadAllBytes(Path.Combine(examples, "visit.xlsx"));
Compare(
    "read the example workbook",
    20,
    () => WorkbookRecordReader.Read(new MemoryStream(workbook), "visit.xlsx"),
    () => ReadBare(workbook),
    "ZipArchive and XmlReader, nothing kept"
);

await ComparePrintingAsync();
Console.WriteLine($"peak memory of this process: {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576} MiB");
return 0;

async Task ComparePrintingAsync()
{
    var html = new StringBuilder("<!doctype html><meta charset=utf-8><title>t</title><h1>Report</h1><table>");
    for (var row = 0; row < 60; row++)
        html.Append(CultureInfo.InvariantCulture, $"<tr><td>{row}</td><td>Connector</td><td>May stay in service</td></tr>");
    var page = html.Append("</table>").ToString();
    const int Times = 20;

    await using var ours = await Browser.StartAsync();
    await ours.PrintAsync(page);
    var one = Stopwatch.StartNew();
    for (var i = 0; i < Times; i++)
        await ours.PrintAsync(page);
    one.Stop();

    var path = BrowserPath.Find();
    await using var bare = await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = path, Args = ["--no-sandbox"] });
    await using var reused = await bare.NewPageAsync();
    await PrintBareAsync(reused);
    var other = Stopwatch.StartNew();
    for (var i = 0; i < Times; i++)
        await PrintBareAsync(reused);
    other.Stop();
    Print(
        $"print a two-page document, {Times} times",
        one.Elapsed / Times,
        other.Elapsed / Times,
        "the same browser, one page reused, no lockdown"
    );

    async Task PrintBareAsync(IPage to)
    {
        await to.SetContentAsync(page);
        await to.PdfDataAsync(new PdfOptions { PreferCSSPageSize = true, PrintBackground = true });
    }
}

static JsonObject WithoutDiameters(JsonObject record)
{
    foreach (var examination in record["examinations"]!.AsArray())
        examination!.AsObject().Remove("diameters");
    return record;
}

static void Compare(string what, int times, Action ours, Action peer, string name)
{
    ours();
    peer();
    Print(what, Least(times, ours), Least(times, peer), name);
}

static TimeSpan Least(int times, Action action) =>
    Enumerable
        .Range(0, times)
        .Min(_ =>
        {
            var watch = Stopwatch.StartNew();
            action();
            return watch.Elapsed;
        });

static void Print(string what, TimeSpan ours, TimeSpan peer, string name) =>
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{what, -46}{ours.TotalMilliseconds, 10:0.0}{peer.TotalMilliseconds, 10:0.0}{ours / peer, 8:0.0}  {name}"
        )
    );

static void ReadBare(byte[] workbook)
{
    using var zip = new ZipArchive(new MemoryStream(workbook));
    foreach (var part in zip.Entries.Where(e => e.FullName.EndsWith(".xml", StringComparison.Ordinal)))
    {
        using var xml = XmlReader.Create(part.Open());
        while (xml.Read()) { }
    }
}

static string Root()
{
    var folder = new DirectoryInfo(AppContext.BaseDirectory);
    while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ExamDocs.sln")))
        folder = folder.Parent;
    return folder?.FullName ?? throw new InvalidOperationException("no ExamDocs.sln above the benchmarks");
}
