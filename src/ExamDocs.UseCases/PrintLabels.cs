using System.Text.RegularExpressions;
using ExamDocs.Core;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Register;
using ExamDocs.Templates;
using ExamDocs.Templates.Wording;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>What the user asks of a sheet of labels.</summary>
public sealed record LabelRequest
{
    /// <summary>Records, or numbers of labels already issued.</summary>
    public required IReadOnlyList<string> InputsOrNumbers { get; init; }

    /// <summary>The sheet to write; the single labels go beside it.</summary>
    public required string OutFile { get; init; }

    public required string RegisterPath { get; init; }

    public required LabelStock Stock { get; init; }

    /// <summary>First place used on the first sheet, counted from 1.</summary>
    public int Start { get; init; } = 1;

    /// <summary>Millimetres to the right and down.</summary>
    public (double X, double Y) Offset { get; init; }

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The language of labels issued now; those issued before stay as they are.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;
}

/// <summary>What came of it.</summary>
/// <param name="Inputs">The inputs as checked.</param>
/// <param name="Labels">The labels on the sheet, in their order.</param>
/// <param name="Refused">Why nothing was printed; null where it was, or where there was nothing to print.</param>
/// <param name="Unprintable">Sentences about labels that could not be printed as recorded.</param>
/// <param name="Failure">Why the machinery stopped; null where it did not.</param>
public sealed record LabelResult(
    IReadOnlyList<CheckedInput> Inputs, IReadOnlyList<Issued> Labels, string? Refused, IReadOnlyList<string> Unprintable, string? Failure);

/// <summary>Puts labels on a stock: those that records call for, and those already issued, never altered.</summary>
public static partial class PrintLabels
{
    /// <exception cref="IOException">The register or a file cannot be written.</exception>
    public static async Task<LabelResult> RunAsync(LabelRequest request, CancellationToken cancellation = default)
    {
        var asked = request.InputsOrNumbers.Select(a => (Asked: a, IsNumber: !File.Exists(a) && Number().IsMatch(a))).ToList();
        var inputs = CheckRecord.All([.. asked.Where(a => !a.IsNumber).Select(a => a.Asked)], request.Today, request.Rules);
        if (inputs.Any(i => i.Unreadable is not null))
            return new LabelResult(inputs, [], null, [], null);

        using var register = DocumentRegister.Open(request.RegisterPath);
        register.Recover();
        var reprints = asked.Where(a => a.IsNumber).Select(a => (a.Asked, Document: register.FindByNumber(a.Asked))).ToList();
        if (reprints.Find(r => !string.Equals(r.Document?.Kind, DocumentTypes.QuarantineLabel.Kind, StringComparison.Ordinal)) is { Asked: { } unknown })
            return new LabelResult(inputs, [], $"{unknown} is no label that this register has issued", [], null);

        await using var press = new Press(register, Path.GetDirectoryName(Path.GetFullPath(request.OutFile))!, request.Today);
        var failure = await press.RunAsync([.. inputs.SelectMany(i => ComposeDocuments.Labels(i.Visit!)).Select(j => j with { Language = request.Language })], cancellation);
        List<Issued> labels = [.. reprints.Select(r => new Issued(r.Document!, IssuedNow: false)), .. press.Documents];
        var refused = failure is null && labels.Count > 0 ? Place([.. labels.Select(l => press.Content(l.Document))], request) : null;
        return new LabelResult(inputs, labels, refused, press.Unprintable, failure);
    }

    /// <returns>Why the sheet was not written; null where it was.</returns>
    private static string? Place(IReadOnlyList<byte[]> labels, LabelRequest request)
    {
        try
        {
            WholeFile.Write(request.OutFile, LabelSheet.Impose(labels, request.Stock, request.Start, request.Offset));
            return null;
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
