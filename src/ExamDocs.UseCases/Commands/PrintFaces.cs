using System.Globalization;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Verifying;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>
/// Prints issued next-examination labels in the size of a stock: the same words under the same number, as far as they have room. The
/// register keeps what was issued.
/// </summary>
/// <param name="stock">A stock whose labels have a size of their own.</param>
/// <param name="rules">The categories and regimes that records can name.</param>
/// <param name="today">Printed nowhere on them.</param>
/// <param name="open">A browser that is open already and stays open; null to start one.</param>
internal sealed class PrintFaces(LabelStock stock, KnownRules rules, LocalDate today, Browser? open) : IAsyncDisposable
{
    private readonly DocumentRenderer _renderer = new();
    private readonly List<string> _unprintable = [];
    private Browser? _ownBrowser;

    /// <summary>Sentences about labels that are left off the sheet.</summary>
    public IReadOnlyList<string> Unprintable => _unprintable;

    /// <returns>Null where it is left off the sheet, which is said.</returns>
    public async Task<byte[]?> PrintAsync(Issued label, Func<byte[]> content, CancellationToken cancellation)
    {
        var (job, objection) = label.Job is { } known ? (known, null) : RecomposedLabel.Of(content(), rules);
        if (job is null)
            return LeaveOff(label, $"{label.Number} {objection}", "Give the record instead of the number.");
        var identity = new DocumentIdentity(label.Kind, label.Number, today, ProgramVersion.Current) { Letterhead = job.Letterhead };
        var (misfits, html) = await job.Language.InAsync(async () =>
        {
            var model = new DueFaceModel(new DueLabelModel(identity, job.Visit, job.Items[0]), stock.Format.Face!);
            return (model.Misfits, model.Misfits.Count > 0 ? "" : await _renderer.HtmlAsync(model));
        });
        if (misfits.Count > 0)
            return LeaveOff(label, Shortfall(misfits), "Take a larger stock for it.");
        var printed = await (open ?? (_ownBrowser ??= await Browser.StartAsync())).PrintAsync(html, cancellation);
        return FaithfulPrint.Faults(html, printed) is [var fault, ..]
            ? LeaveOff(label, $"{PrintRules.PrintIsFaithful.Code}: {fault}", PrintRules.PrintIsFaithful.Hint.Text)
            : printed;
    }

    private static string Shortfall(IReadOnlyList<string> misfits) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{PrintRules.LabelHoldsItsText.Code}: no room for the whole of {string.Join(", ", misfits)} with capitals of "
                + $"{DueFace.LeastCapitalsMm} mm"
        );

    private byte[]? LeaveOff(Issued label, string why, string hint)
    {
        _unprintable.Add($"{label.Number} of {string.Join(", ", label.Items)} is not on this sheet of {stock.Name}. {why}. Hint: {hint}");
        return null;
    }

    public async ValueTask DisposeAsync()
    {
        await _renderer.DisposeAsync();
        if (_ownBrowser is not null)
            await _ownBrowser.DisposeAsync();
    }
}
