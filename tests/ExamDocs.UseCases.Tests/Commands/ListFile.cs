using ClosedXML.Excel;
using ExamDocs.Core;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>An invented list of kit in a folder of its own, and what becomes of it.</summary>
internal sealed class ListFile : IDisposable
{
    public static readonly LocalDate AsOf = new(2026, 4, 1);

    private readonly XLWorkbook _workbook = new();

    public string Folder { get; } = Directory.CreateTempSubdirectory("examdocs-adopt-").FullName;

    public string Out => Path.Combine(Folder, "kit-to-examine.xlsx");

    public string Name { get; init; } = "our kit.xlsx";

    /// <summary>Questions that were asked.</summary>
    public List<AdoptQuestion> Asked { get; } = [];

    /// <param name="name">The sheet's name.</param>
    /// <param name="rows">Texts, numbers and days; null for an empty cell.</param>
    public IXLWorksheet Sheet(string name, params IEnumerable<object?[]> rows)
    {
        var sheet = _workbook.AddWorksheet(name);
        var at = 0;
        foreach (var row in rows)
        {
            at++;
            for (var n = 0; n < row.Length; n++)
            {
                var cell = sheet.Cell(at, n + 1);
                if (row[n] is DateTime day)
                    cell.SetValue(day);
                else if (row[n] is int number)
                    cell.SetValue(number);
                else if (row[n] is string text)
                    cell.SetValue<string>(text);
            }
        }
        return sheet;
    }

    /// <param name="answer">Of a question and its number, counted from 1, the choice; null where nobody can be asked.</param>
    public AdoptResult Adopt(Func<AdoptQuestion, int>? answer = null, string? map = null)
    {
        if (_workbook.Worksheets.Count > 0 && !File.Exists(Path.Combine(Folder, Name)))
            _workbook.SaveAs(Path.Combine(Folder, Name));
        return AdoptList.Run(
            new AdoptRequest(Path.Combine(Folder, Name), Out, AsOf)
            {
                MapFile = map is null ? null : Path.Combine(Folder, map),
                Ask = answer is null
                    ? null
                    : question =>
                    {
                        Asked.Add(question);
                        return answer(question);
                    },
            }
        );
    }

    public static int Propose(AdoptQuestion question) => question.Proposed;

    /// <summary>The record that the workbook written holds.</summary>
    public ExaminationRecord Record()
    {
        var read = ReadInput.From(Out);
        Assert.Null(read.Unreadable);
        return read.Record!;
    }

    /// <summary>What check makes of the workbook, a day later.</summary>
    public Dictionary<string, DeterminedItemView> Checked()
    {
        var read = ReadInput.From(Out);
        Assert.NotNull(read.Record);
        var day = AsOf.PlusDays(30);
        var record = read.Record! with { Visit = read.Record.Visit with { Reference = "V-1", ExaminedOn = day, ReportedOn = day } };
        return Determine
            .Visit(record, read.Findings, History.None, day)
            .Items.ToDictionary(
                i => i.Item.Id!,
                i => new DeterminedItemView(i.Outcome, [.. i.Reasons.Select(r => r.Code)]),
                StringComparer.Ordinal
            );
    }

    public void Dispose()
    {
        _workbook.Dispose();
        Directory.Delete(Folder, recursive: true);
    }
}

/// <summary>An outcome and the codes of its reasons.</summary>
internal sealed record DeterminedItemView(Outcome Outcome, IReadOnlyList<string> Codes);
