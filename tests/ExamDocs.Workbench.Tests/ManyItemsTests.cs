using System.Diagnostics;
using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>As many items as a visit of a day has, recorded at the pace of somebody who is used to it; how long it took is written down.</summary>
public sealed class ManyItemsTests(OpenedBrowser browser)
{
    private const int Connectors = 60;
    private const int Criteria = 17;

    /// <summary>Milliseconds between two keys: the time to look is not in it.</summary>
    private const int KeyMs = 250;

    [Fact]
    public async Task Sixty_connectors_are_recorded_by_keys_with_nothing_lost()
    {
        Assert.SkipUnless(UseCases.Tests.Effort.IsFull, "types for five minutes: EXAMDOCS_PROOF=full");
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open, Connectors);
        var page = await browser.OpenAsync(1280);
        await LastVisit.StartNextAsync(open, page);
        await page.Locator(".items a:text-is('C-1')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        var (watch, keys) = (Stopwatch.StartNew(), 0);
        for (var n = 1; n <= Connectors; n++)
        {
            await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(string.Create(CultureInfo.InvariantCulture, $"C-{n}"));
            var here = page.Url;
            foreach (var key in Enumerable.Repeat("1", Criteria).Append("f").Append("Enter"))
            {
                await Task.Delay(KeyMs, TestContext.Current.CancellationToken);
                await page.Keyboard.PressAsync(key);
                keys++;
            }
            await page.WaitForURLAsync(url => url != here, new() { WaitUntil = WaitUntilState.DOMContentLoaded });
        }
        watch.Stop();
        TestContext.Current.TestOutputHelper?.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Connectors} items, {keys} keys: {watch.Elapsed.TotalSeconds:0} s, of which {keys * KeyMs / 1000} s between keys"
            )
        );
        var now = CheckRecord
            .Of(LastVisit.Draft(open), OpenedWorkbench.Today)
            .Visit!.Record.Examinations.Where(e => e.ExaminedOn is null || e.ExaminedOn == OpenedWorkbench.Today)
            .Where(e => e.Conclusion is Conclusion.Fit)
            .ToList();
        Assert.Equal(Connectors, now.Count);
        Assert.All(now, e => Assert.Equal(Criteria, e.Observations.Count(o => o.State is ObservedState.Clear)));
    }
}
