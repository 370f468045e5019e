using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>A register that knows a connector and a rope bridge, measured at five places half a year ago; and the next visit.</summary>
internal static class LastVisit
{
    public const string Connector = "C-1",
        Bridge = "RB-1";

    public static readonly string[] Readings = ["11.1 11.0", "11.0 11.0", "10.9 11.0", "11.0 11.1", "11.1 11.1"];

    private static readonly int[] Places = [50, 200, 400, 600, 750];

    /// <summary>Puts the last visit into the register of a workbench.</summary>
    /// <param name="open">The workbench.</param>
    /// <param name="connectors">How many of them; the first has the id <see cref="Connector"/>.</param>
    public static void Remember(OpenedWorkbench open, int connectors = 1)
    {
        var file = Path.Combine(Path.GetDirectoryName(open.Register)!, "last.json");
        File.WriteAllText(file, Of("V-1", "2025-11-12", "2025-05-14", connectors), Encoding.UTF8);
        ImportVisits.Run([file], open.Register, OpenedWorkbench.Today, KnownRules.BuiltIn);
    }

    /// <summary>A visit to both as somebody would type it as JSON: all clear.</summary>
    public static string Of(string reference, string day, string before, int connectors = 1)
    {
        var visit = new StoryVisit(reference, day, "Alder Vale Ltd");
        for (var n = 1; n <= connectors; n++)
            visit = visit.Connector(
                string.Create(CultureInfo.InvariantCulture, $"C-{n}"),
                string.Create(CultureInfo.InvariantCulture, $"S{99 + n}")
            );
        var record = JsonNode.Parse(visit.Bridge(Bridge, "Q100").Json)!;
        foreach (var item in record["items"]!.AsArray())
            item!["lastExamined"] = before;
        foreach (var examination in record["examinations"]!.AsArray())
        {
            // Whatever can be answered, required or not.
            var category = (string)examination!["item"]! == Bridge ? "rope-bridge" : "connector";
            examination["observations"] = new JsonArray([
                .. KnownRules
                    .BuiltIn.FindCategory(category)!
                    .Criteria.Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
            ]);
        }
        record["examinations"]![connectors]!["diameters"] = new JsonArray([
            .. Places.Zip(Readings, (place, read) =>
                new JsonObject
                {
                    ["positionMm"] = place,
                    ["readingsMm"] = new JsonArray([
                        .. read.Split(' ').Select(r => JsonValue.Create(decimal.Parse(r, CultureInfo.InvariantCulture))),
                    ]),
                }
            ),
        ]);
        return record.ToJsonString();
    }

    /// <summary>Enters, says who works here and starts the next visit with its particulars: the page with the list of items.</summary>
    public static async Task StartNextAsync(OpenedWorkbench open, IPage page, Func<string, Task>? look = null)
    {
        await EnterAsync(open, page);
        if (look is not null)
            await look("desk-start");
        await page.GetByLabel("Items due by").FillAsync("2026-06-30");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start with what falls due" }).ClickAsync();
        await page.ArriveAsync("**/particulars");
        if (look is not null)
            await look("particulars-new");
        await FillParticularsAsync(page, "V-2");
        await page.ArriveAsync("**/record");
    }

    /// <summary>Says of a visit what the register did not say, and saves it.</summary>
    /// <param name="page">Its particulars.</param>
    /// <param name="reference">Its reference.</param>
    /// <param name="employer">For whom, where nothing says so yet.</param>
    public static async Task FillParticularsAsync(IPage page, string reference, string? employer = null)
    {
        if (employer is not null)
        {
            foreach (var party in new[] { "visit-employer", "visit-premises" })
            {
                await page.Locator($"#{party}-name").FillAsync(employer);
                await page.Locator($"#{party}-address").FillAsync("1 Mill Lane, Alderton");
            }
            await page.Locator("#examiner-address").FillAsync("2 Mill Lane, Alderton");
            await page.Locator("#visit-regime").SelectOptionAsync("gb-loler");
        }
        await page.GetByLabel("Reference of the visit").FillAsync(reference);
        await page.GetByLabel("Examined on", new() { Exact = true }).FillAsync("2026-05-12");
        await page.GetByLabel("Date of the report").FillAsync("2026-05-12");
        await page.GetByLabel("Why it is examined").SelectOptionAsync("six-month");
        await page.GetByLabel("Is the examiner self-employed?").SelectOptionAsync("yes");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save and show all items" }).ClickAsync();
    }

    public static async Task EnterAsync(OpenedWorkbench open, IPage page)
    {
        await page.GotoAsync(open.Entry.AbsoluteUri);
        await page.GetByLabel("Your name").FillAsync("Ada Fenn");
        await page.GetByLabel("Qualifications").FillAsync("Guild examiner");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await page.ArriveAsync(open.Address + "/");
    }

    /// <summary>The draft that lies on the desk.</summary>
    public static string Draft(OpenedWorkbench open) => open.Files.Single(f => f.EndsWith("visit.draft.json", StringComparison.Ordinal));
}
