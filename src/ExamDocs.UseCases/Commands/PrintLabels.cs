using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Identity;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Puts labels on a stock: those that records call for, and those already issued, never altered.</summary>
public static class PrintLabels
{
    /// <summary>The kinds of label, each with the stock taken where none is named.</summary>
    public static IReadOnlyList<(string Kind, string UsualStock)> Kinds { get; } =
    [.. LabelFormat.All.Select(f => (f.Type.Kind, f.UsualStock))];

    /// <exception cref="IOException">The register or a file cannot be written.</exception>
    /// <exception cref="OutputRefusedException">The sheet may not be written there; nothing was issued.</exception>
    public static async Task<LabelResult> RunAsync(LabelRequest request, CancellationToken cancellation = default)
    {
        request.Outputs.For(request.InputsOrNumbers, request.RegisterPath).Require(request.OutFile);
        // What was typed or scanned, where it is the number of a document and no file.
        var asked = request.InputsOrNumbers.Select(a => (Asked: a, Code: File.Exists(a) ? null : CodeLine.Read(a))).ToList();
        var codes = asked.Select(a => a.Code).OfType<CodeLine>().ToList();
        var (stock, objection) = StockFor(request, codes.FirstOrDefault()?.Number);
        if (objection is not null)
            return LabelResult.Stopped(objection, []);
        var steps = RunSteps.From(RunStage.Reading, request.Progress);
        var read = ReadVisits.From([.. asked.Where(a => a.Code is null).Select(a => a.Asked)], request.Rules);
        if (read.Any(v => v.Unreadable is not null))
            return new LabelResult(DecideRun.Check(read, null, request.Today, request.Rules), [], null, [], null);

        // A run that asks for numbered labels only issues nothing, and makes no register.
        if (read.Count == 0 && !DocumentRegister.Exists(request.RegisterPath))
            return LabelResult.Stopped($"{codes[0].Number} is no label of a register here: there is none yet", []);
        await using var run = Open(request);
        var register = run.Register;
        if (
            codes.Select(c => ObjectionTo(c.Number, c.Item, register.Find(c.Number), stock)).FirstOrDefault(o => o is not null) is { } other
        )
            return LabelResult.Stopped(other, DecideRun.Check(read, register, request.Today, request.Rules));
        foreach (var code in codes)
            DocumentVisit.Require(register, register.Find(code.Number));
        if (NoLongerUsable(register, codes, request.Today) is { } unusable)
            return LabelResult.Stopped(unusable, DecideRun.Check(read, register, request.Today, request.Rules));

        var others = new List<DocumentJob>();
        var failure = await run.IssueAsync(
            read,
            (input, ended) => Compose(input.Visit!, ended, request, stock, others),
            input => Jobs(input.Visit!, request).Count(j => j.Type == stock.Format.Type),
            steps,
            cancellation
        );
        Issued[] labels = [.. codes.Select(c => new Issued(register.FindByNumber(c.Number)!, IssuedNow: false)), .. run.Prints.Documents];
        await using var faces = new PrintFaces(stock, request.Rules, request.Today, request.Browser);
        var placed = failure is null ? await ToPlaceAsync(labels, stock, run, faces, cancellation) : [];
        var refused = placed.Count > 0 ? Place([.. placed.Select(p => p.Pdf)], request, stock) : null;
        return new LabelResult(
            run.Inputs,
            failure is null ? [.. placed.Select(p => p.Label)] : labels,
            refused,
            [.. run.Prints.Unprintable, .. faces.Unprintable],
            failure
        )
        {
            Remarks = [.. run.Remarks, .. Others(others)],
        };
    }

    /// <summary>The labels as issued; on a stock with a size of its own, in that size, without those that have no room there.</summary>
    private static async Task<IReadOnlyList<(Issued Label, byte[] Pdf)>> ToPlaceAsync(
        IReadOnlyList<Issued> labels,
        LabelStock stock,
        RegisteredRun run,
        PrintFaces faces,
        CancellationToken cancellation
    )
    {
        var placed = new List<(Issued, byte[])>();
        foreach (var label in labels)
        {
            byte[] Content() => run.Prints.Content(label.Document);
            if ((stock.Format.Face is null ? Content() : await faces.PrintAsync(label, Content, cancellation)) is { } pdf)
                placed.Add((label, pdf));
        }
        return placed;
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
        var jobs = Jobs(visit, request)
            .Select(j => j.In(request.Style))
            .Select(ended.Without)
            .OfType<DocumentJob>()
            .ToLookup(j => j.Type == stock.Format.Type);
        others.AddRange(jobs[false]);
        return [.. jobs[true]];
    }

    private static RegisteredRun Open(LabelRequest request) =>
        RegisteredRun.Open(request.RegisterPath, null, request.Today, request.Rules, browser: request.Browser);

    private static IEnumerable<DocumentJob> Jobs(DeterminedVisit visit, LabelRequest request) =>
        ComposeDocuments.Labels(visit, request.Style.Reading).Concat(ComposeDocuments.DueLabels(visit));

    /// <returns>The stock, and why nothing can be printed on it as asked; null where it can.</returns>
    private static (LabelStock Stock, string? Objection) StockFor(LabelRequest request, string? first)
    {
        var format = LabelFormat.Of(request.Kind)
            ?? request.Stock?.Stock?.Format
            ?? LabelFormat.All.FirstOrDefault(f => f.Type.Letter == first?[0])
            ?? LabelFormat.Quarantine;
        var stock = request.Stock?.Stock ?? LabelStock.Find(format.UsualStock)!;
        return (
            stock,
            request.Stock is { Stock: null } unread ? unread.Faults[0]
            : stock.Format.Type == format.Type ? request.Placing.Objection(stock)
            : $"stock {stock.Name} is for {stock.Format.Type.Kind}; for {format.Type.Kind} take {Stocks(format)}"
        );
    }

    private static string? ObjectionTo(string asked, string? item, DocumentStatus? document, LabelStock stock) =>
        LabelFormat.Of(document is { State: DocumentState.Issued } ? document.Kind : null) switch
        {
            _ when document is { Ended: DocumentEnd.Replaced } =>
                $"{asked} was replaced by {string.Join(", ", document.ReplacedBy)}: print that",
            _ when document is { Ended: DocumentEnd.Withdrawn } => $"{asked} was withdrawn: {document.EndedReason}",
            _ when document is { Ended: DocumentEnd.Ended } =>
                $"{asked} no longer holds: {EndedWords.Of(document).Text}. Labels of the record are decided anew when the record "
                    + "is given instead of the number",
            null => $"{asked} is no label that this register has issued",
            _ when item is not null && !document!.Items.Contains(item, StringComparer.Ordinal) =>
                $"the code says {asked} of {item}, and {asked} is about {string.Join(", ", document!.Items)} in this register: it is "
                    + "the code of another register's label",
            var format when format.Type != stock.Format.Type =>
                $"{asked} is a {format.Type.Kind}, and stock {stock.Name} is for {stock.Format.Type.Kind}; take {Stocks(format)}",
            _ => null,
        };

    /// <summary>
    /// Why one of these labels is not printed again: what came into the register late ends no label, and its item may not be used all the
    /// same. Null where nothing is against any of them.
    /// </summary>
    private static string? NoLongerUsable(DocumentRegister register, IEnumerable<CodeLine> codes, LocalDate today)
    {
        var standing = new DocumentStanding(register, today) { PassedDaysCount = true };
        return (
            from document in codes.Select(c => register.Find(c.Number)).OfType<DocumentStatus>()
            from against in standing.Against(document)
            select $"{document.Number} is not printed again, as it would say that {against.Item} may be used: {against.Why.Text}"
        ).FirstOrDefault();
    }

    private static string Stocks(LabelFormat format) =>
        string.Join(" or ", LabelStock.All.Where(s => s.Format.Type == format.Type).Select(s => s.Name));

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
}
