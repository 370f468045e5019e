using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Commands;

/// <summary>Puts labels on a stock: those that records call for, and those already issued, never altered.</summary>
public static partial class PrintLabels
{
    /// <summary>The kinds of label, each with the stock taken where none is named.</summary>
    public static IReadOnlyList<(string Kind, string UsualStock)> Kinds { get; } =
    [.. LabelFormat.All.Select(f => (f.Type.Kind, f.UsualStock))];

    /// <exception cref="IOException">The register or a file cannot be written.</exception>
    /// <exception cref="OutputRefusedException">The sheet may not be written there; nothing was issued.</exception>
    public static async Task<LabelResult> RunAsync(LabelRequest request, CancellationToken cancellation = default)
    {
        request.Outputs.For(request.InputsOrNumbers, request.RegisterPath).Require(request.OutFile);
        var (stock, objection) = StockFor(request);
        if (objection is not null)
            return LabelResult.Stopped(objection, []);
        var asked = request.InputsOrNumbers.Select(a => (Asked: a, IsNumber: !File.Exists(a) && Number().IsMatch(a))).ToList();
        var read = ReadVisits.From([.. asked.Where(a => !a.IsNumber).Select(a => a.Asked)], request.Rules);
        if (read.Any(v => v.Unreadable is not null))
            return new LabelResult(DecideRun.Check(read, null, request.Today, request.Rules), [], null, [], null);

        // What asks for numbers alone issues nothing, and makes no register.
        if (read.Count == 0 && !DocumentRegister.Exists(request.RegisterPath))
            return LabelResult.Stopped($"{asked[0].Asked} is no label of a register here: there is none yet", []);
        await using var run = RegisteredRun.Open(
            request.RegisterPath,
            folder: null,
            request.Today,
            request.Rules,
            browser: request.Browser
        );
        var register = run.Register;
        var reprints = asked.Where(a => a.IsNumber).Select(a => (a.Asked, Document: register.FindByNumber(a.Asked))).ToList();
        if (reprints.Select(r => ObjectionTo(r.Asked, register.Find(r.Asked), stock)).FirstOrDefault(o => o is not null) is { } other)
            return LabelResult.Stopped(other, DecideRun.Check(read, register, request.Today, request.Rules));
        foreach (var (number, _) in reprints)
            DocumentVisit.Require(register, register.Find(number));

        var others = new List<DocumentJob>();
        var failure = await run.IssueAsync(read, (input, ended) => Compose(input.Visit!, ended, request, stock, others), cancellation);
        List<Issued> labels = [.. reprints.Select(r => new Issued(r.Document!, IssuedNow: false)), .. run.Prints.Documents];
        var refused =
            failure is null && labels.Count > 0 ? Place([.. labels.Select(l => run.Prints.Content(l.Document))], request, stock) : null;
        return new LabelResult(run.Inputs, labels, refused, run.Prints.Unprintable, failure)
        {
            Remarks = [.. run.Remarks, .. Others(others)],
        };
    }

    /// <summary>The labels of a visit for the stock; those for another are only named.</summary>
    private static IReadOnlyList<DocumentJob> Compose(
        DeterminedVisit visit,
        EndedLines ended,
        LabelRequest request,
        LabelStock stock,
        List<DocumentJob> others
    )
    {
        var jobs = ComposeDocuments
            .Labels(visit, request.Style.Reading)
            .Concat(ComposeDocuments.DueLabels(visit))
            .Select(j => j.In(request.Style))
            .Select(ended.Without)
            .OfType<DocumentJob>()
            .ToLookup(j => j.Type == stock.Format.Type);
        others.AddRange(jobs[false]);
        return [.. jobs[true]];
    }

    /// <returns>The stock, and why nothing can be printed on it as asked; null where it can.</returns>
    private static (LabelStock Stock, string? Objection) StockFor(LabelRequest request)
    {
        var first = request.InputsOrNumbers.FirstOrDefault(a => Number().IsMatch(a) && !File.Exists(a));
        var format = LabelFormat.Of(request.Kind)
            ?? request.Stock?.Stock?.Format
            ?? LabelFormat.All.FirstOrDefault(f => f.Type.Letter == first?[0])
            ?? LabelFormat.Quarantine;
        var stock = request.Stock?.Stock ?? LabelStock.Find(format.UsualStock)!;
        return (
            stock,
            request.Stock is { Stock: null } unread ? unread.Faults[0]
            : stock.Format == format ? request.Placing.Objection(stock)
            : $"stock {stock.Name} is for {stock.Format.Type.Kind}; for {format.Type.Kind} take {Stocks(format)}"
        );
    }

    private static string? ObjectionTo(string asked, DocumentStatus? document, LabelStock stock) =>
        LabelFormat.Of(document is { State: DocumentState.Issued } ? document.Kind : null) switch
        {
            _ when document is { Ended: DocumentEnd.Replaced } =>
                $"{asked} was replaced by {string.Join(", ", document.ReplacedBy)}: print that",
            _ when document is { Ended: DocumentEnd.Withdrawn } => $"{asked} was withdrawn: {document.EndedReason}",
            _ when document is { Ended: DocumentEnd.Ended } =>
                $"{asked} no longer holds: {EndedWords.Of(document)}. Labels of the record are decided anew when the record "
                    + "is given instead of the number",
            null => $"{asked} is no label that this register has issued",
            var format when format != stock.Format =>
                $"{asked} is a {format.Type.Kind}, and stock {stock.Name} is for {stock.Format.Type.Kind}; take {Stocks(format)}",
            _ => null,
        };

    private static string Stocks(LabelFormat format) =>
        string.Join(" or ", LabelStock.All.Where(s => s.Format == format).Select(s => s.Name));

    private static IEnumerable<string> Others(IReadOnlyList<DocumentJob> others) =>
        from kind in others.GroupBy(j => j.Type.Kind, StringComparer.Ordinal)
        select string.Create(
            CultureInfo.InvariantCulture,
            $"not on this stock: {kind.Count()} of kind {kind.Key}; --only {kind.Key} prints them"
        );

    /// <returns>Why the sheet was not written; null where it was.</returns>
    private static string? Place(IReadOnlyList<byte[]> labels, LabelRequest request, LabelStock stock)
    {
        try
        {
            var printed = request.BlackOnly ? [.. labels.Select(BlackInk.Only)] : labels;
            var sheet = LabelSheet.Impose(printed, stock, request.Placing);
            request.Outputs.For(request.InputsOrNumbers, request.RegisterPath).Write(request.OutFile, sheet);
            return null;
        }
        catch (NotSupportedException e)
        {
            return e.Message;
        }
        catch (ArgumentException e)
        {
            // The first line says it; what follows names the parameter, which is none of the user's business.
            return e.Message.Split(" (Parameter", 2, StringSplitOptions.None)[0];
        }
    }

    [GeneratedRegex(@"\A[A-Z]-[0-9]{4}-[0-9]{6,9}\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}
