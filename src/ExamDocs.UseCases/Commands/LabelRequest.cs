using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of a sheet of labels.</summary>
public sealed record LabelRequest
{
    /// <summary>Records, or numbers of labels already issued.</summary>
    public required IReadOnlyList<string> InputsOrNumbers { get; init; }

    /// <summary>The sheet to write, as the user typed it; the single labels are kept in the register.</summary>
    public required string OutFile { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    public required string RegisterPath { get; init; }

    /// <summary>What is printed on, as <see cref="ReadLabelStock"/> found it without a fault; null for the usual one of the kind.</summary>
    public LabelStockRead? Stock { get; init; }

    /// <summary>Labels of this kind; null for the kind of the stock, else of the first number, else quarantine-label.</summary>
    public string? Kind { get; init; }

    /// <summary>The first place used on the first sheet, counted from 1 along the rows.</summary>
    public int Start { get; init; } = 1;

    /// <summary>How far the printer is off, millimetres to the right and down.</summary>
    public (double X, double Y) OffsetMm { get; init; }

    /// <summary>Marks in the margins that show where to cut.</summary>
    public bool CropMarks { get; init; }

    internal Placing Placing => new(Start, OffsetMm.X, OffsetMm.Y, CropMarks);

    /// <summary>Solid black and white, for printers without colours and greys.</summary>
    public bool BlackOnly { get; init; }

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>How labels are printed that are issued now.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }

    /// <summary>Told how far it is; null for nobody.</summary>
    public Action<RunProgress>? Progress { get; init; }
}
