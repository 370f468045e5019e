using System.Collections.Concurrent;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared;

namespace ExamDocs.Documents.Tests.LabelSheets;

/// <summary>A label of the example, printed.</summary>
/// <param name="Pdf">The file.</param>
/// <param name="Code">Its code.</param>
internal sealed record PrintedLabel(byte[] Pdf, ItemCode Code);

/// <summary>Four labels of each kind from the example, printed once for all tests.</summary>
internal sealed class PrintedLabels(SharedBrowser browser)
{
    private static readonly ConcurrentDictionary<LabelFormat, Lazy<Task<IReadOnlyList<PrintedLabel>>>> Printed = new();

    public async Task<List<byte[]>> OfAsync(LabelFormat format) => [.. (await AllAsync(format)).Select(l => l.Pdf)];

    /// <summary>As many as a sheet holds, the four over and over.</summary>
    public async Task<List<byte[]>> FillAsync(LabelStock stock)
    {
        var labels = await AllAsync(stock.Format);
        return [.. Enumerable.Range(0, stock.PerSheet).Select(p => labels[p % labels.Count].Pdf)];
    }

    /// <summary>What <see cref="FillAsync"/> put there.</summary>
    public async Task<PrintedLabel> MadeAsync(LabelStock stock, int place)
    {
        var labels = await AllAsync(stock.Format);
        return labels[place % labels.Count];
    }

    private Task<IReadOnlyList<PrintedLabel>> AllAsync(LabelFormat format) =>
        Printed.GetOrAdd(format, f => new Lazy<Task<IReadOnlyList<PrintedLabel>>>(() => PrintAsync(f))).Value;

    private async Task<IReadOnlyList<PrintedLabel>> PrintAsync(LabelFormat format) =>
        format.Type == DocumentTypes.DueLabel ? await DueAsync(format.Face) : await QuarantineAsync();

    private async Task<IReadOnlyList<PrintedLabel>> QuarantineAsync()
    {
        var labels = new List<PrintedLabel>();
        var withdrawn = Example.Visit.Items.Where(i => i.Outcome == Outcome.Withdraw).Take(3);
        foreach (var item in withdrawn.Append(Example.Item("PUL-02")))
        {
            var model = new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel, labels.Count + 1), Example.Visit, item);
            labels.Add(new PrintedLabel(await browser.PrintAsync(await browser.Renderer.HtmlAsync(model)), model.Code));
        }
        return labels;
    }

    private async Task<IReadOnlyList<PrintedLabel>> DueAsync(DueFace? face)
    {
        var labels = new List<PrintedLabel>();
        string[] ids = ["CON-01", "CLR-03", "HAR-06", "CLR-01"];
        foreach (var item in ids.Select(Example.Item))
        {
            var label = new DueLabelModel(Example.Identity(DocumentTypes.DueLabel, labels.Count + 1), Example.Visit, item);
            var onFace = face is null ? null : new DueFaceModel(label, face);
            var html = onFace is null ? await browser.Renderer.HtmlAsync(label) : await browser.Renderer.HtmlAsync(onFace);
            labels.Add(new PrintedLabel(await browser.PrintAsync(html), onFace?.Code ?? label.Code));
        }
        return labels;
    }
}
