using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.CheckSheet;
using ExamDocs.Templates.EquipmentRecord;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.ReadingBack.Fuzz;

/// <summary>A lawful document of ordinary words and numbers, made from a number: the same number gives the same document.</summary>
internal sealed class DrawnVisit(int seed)
{
    private static readonly string[] Words =
    [
        "rope",
        "bridge",
        "worn",
        "bright",
        "at",
        "the",
        "thimble",
        "50",
        "12.5",
        "no",
        "cut",
        "7 mm",
        "grey",
        "deposit",
        "150",
        "ring",
        "side",
        "left",
        "0.5",
        "3",
        "dry",
        "soil",
        "stitch",
        "label",
        "200",
        "1",
    ];
    private static readonly decimal[] Nominals = [9m, 10.5m, 11m, 11.5m, 12m, 12.5m, 13m, 14m];

    private readonly Random _dice = new(seed);

    /// <summary>The page of a report, a notice, a record or a check sheet.</summary>
    public Task<string> HtmlAsync(DocumentRenderer renderer)
    {
        var language = (new[] { Language.English, Language.German, Language.French })[seed % 3];
        var visit = Example.Determined(Changed(Example.Record));
        return language.InAsync(() => Page(renderer, visit));
    }

    private Task<string> Page(DocumentRenderer renderer, DeterminedVisit visit)
    {
        var bridges = visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler" && i.Item.Category == "rope-bridge").ToList();
        var others = visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler").ToList();
        List<DeterminedItem> items =
        [
            .. bridges.OrderBy(_ => _dice.Next()).Take(_dice.Next(1, 5)),
            .. others.OrderBy(_ => _dice.Next()).Take(_dice.Next(0, 4)),
        ];
        items = [.. items.Distinct()];
        var author = visit.Person(items[0].Examination!.Author ?? items[0].Examination!.Examiner)!;
        return (seed % 10) switch
        {
            7 when visit.Everything.FirstOrDefault(i => i.Outcome is Outcome.Withdraw) is { } withdrawn => renderer.HtmlAsync(
                new NoticeModel(Example.Identity(DocumentTypes.Notice), visit, withdrawn)
            ),
            8 => renderer.HtmlAsync(new EquipmentRecordModel(Example.Identity(DocumentTypes.EquipmentRecord), visit, items[0])),
            9 => renderer.HtmlAsync(new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), visit, items[0])),
            _ => renderer.HtmlAsync(new ReportModel(Example.Identity(DocumentTypes.Report), visit, items, author, author)),
        };
    }

    private ExaminationRecord Changed(ExaminationRecord record)
    {
        var nominal = Nominals[_dice.Next(Nominals.Length)];
        return record with
        {
            Limits =
            [
                .. record.Limits.Select(l =>
                    l.NominalDiameterMm is null
                        ? l
                        : l with
                        {
                            NominalDiameterMm = nominal,
                            DiameterTolerancePercent = _dice.Next(3) == 0 ? null : _dice.Next(4, 15),
                        }
                ),
            ],
            Items =
            [
                .. record.Items.Select(i =>
                    i with
                    {
                        Description = _dice.Next(2) == 0 ? i.Description : Sentence(1, 9),
                        Serial = _dice.Next(3) == 0 ? Text(_dice.Next(1, 400)) : i.Serial,
                    }
                ),
            ],
            Examinations =
            [
                .. record.Examinations.Select(e =>
                    e with
                    {
                        Diameters = e.Diameters.Count > 0 ? Stations(nominal) : e.Diameters,
                        Observations = [.. e.Observations.Select(o => o.Note is null ? o : o with { Note = Sentence(1, 25) })],
                    }
                ),
            ],
        };
    }

    /// <summary>Even or uneven, few or many, one thick or thin, all alike, falling.</summary>
    private List<DiameterStation> Stations(decimal nominal)
    {
        var count = _dice.Next(1, 15);
        var step = (new[] { 10, 25, 50, 50, 50, 100, 35 })[_dice.Next(7)];
        var odd = _dice.Next(count);
        var shape = _dice.Next(5);
        decimal Mean(int n) =>
            shape switch
            {
                0 => nominal,
                1 => n == odd ? nominal + 2.5m : nominal,
                2 => n == odd ? nominal - 2 : nominal + 0.1m,
                3 => nominal - (0.2m * n),
                _ => nominal + ((decimal)_dice.Next(-20, 20) / 20),
            };
        return
        [
            .. Enumerable
                .Range(1, count)
                .Select(n => new DiameterStation
                {
                    PositionMm = n * step,
                    ReadingsMm = [.. Enumerable.Repeat(Mean(n - 1), _dice.Next(1, 4)).Select(m => (decimal?)m)],
                }),
        ];
    }

    private string Sentence(int least, int most) =>
        string.Join(' ', Enumerable.Range(0, _dice.Next(least, most)).Select(_ => Words[_dice.Next(Words.Length)]));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
