using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates.Label;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of tags to fill in by hand.</summary>
public sealed record HandTagRequest
{
    /// <summary>How many, from 1.</summary>
    public required int Count { get; init; }

    /// <summary>The sheet to write, as the user typed it.</summary>
    public required string OutFile { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>As <see cref="ReadLabelStock"/> found it without a fault; null for the usual one.</summary>
    public LabelStockRead? Stock { get; init; }

    /// <summary>The first place used on the first sheet, counted from 1 along the rows.</summary>
    public int Start { get; init; } = 1;

    /// <summary>How far the printer is off, millimetres to the right and down.</summary>
    public (double X, double Y) OffsetMm { get; init; }

    /// <summary>Marks in the margins that show where to cut.</summary>
    public bool CropMarks { get; init; }

    internal Placing Placing => new(Start, OffsetMm.X, OffsetMm.Y, CropMarks);

    /// <summary>Solid black and white, for printers without colours and greys.</summary>
    public bool BlackOnly { get; init; }

    /// <summary>The language, and the letterhead whose number is to be rung.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>A browser that is open already and stays open; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

/// <summary>
/// Prints tags that say not to use an item, with lines to fill in by hand: for kit that is found before anything of it is recorded.
/// They are no issued documents: they have no number, and the register is not asked.
/// </summary>
public static class PrintHandTags
{
    /// <summary>Most at a time, inclusive; a larger number is taken for a typing error.</summary>
    public const int Most = 500;

    /// <returns>Why nothing was printed; null where it was.</returns>
    /// <exception cref="OutputRefusedException">The sheet may not be written there.</exception>
    public static async Task<string?> RunAsync(HandTagRequest request, CancellationToken cancellation = default)
    {
        request.Outputs.Require(request.OutFile);
        var stock = request.Stock?.Stock ?? LabelStock.Find(LabelFormat.Quarantine.UsualStock)!;
        if (Objection(request, stock) is { } objection)
            return objection;
        await using var renderer = new DocumentRenderer();
        var html = await request.Style.Language.InAsync(() => renderer.HtmlAsync(new HandTagModel(request.Style.Letterhead)));
        var tag = await PrintAsync(html, request, cancellation);
        request.Outputs.Write(
            request.OutFile,
            LabelSheet.Impose([.. Enumerable.Repeat(request.BlackOnly ? BlackInk.Only(tag) : tag, request.Count)], stock, request.Placing)
        );
        return null;
    }

    private static string? Objection(HandTagRequest request, LabelStock stock) =>
        request.Stock is { Stock: null } unread ? unread.Faults[0]
        : request.Count is < 1 or > Most ? FormattableString.Invariant($"--by-hand takes a number from 1 to {Most}")
        : stock.Format != LabelFormat.Quarantine
            ? $"stock {stock.Name} is for {stock.Format.Type.Kind}; tags to fill in by hand are 100 x 150 mm"
        : request.Placing.Objection(stock);

    private static async Task<byte[]> PrintAsync(string html, HandTagRequest request, CancellationToken cancellation)
    {
        if (request.Browser is { } open)
            return await open.PrintAsync(html, cancellation);
        await using var browser = await Browser.StartAsync();
        return await browser.PrintAsync(html, cancellation);
    }
}
