using ExamDocs.Core.Records;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Taking;
using ExamDocs.Intake.Workbook;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Commands;

/// <summary>Takes a firm's own list of kit into a capture workbook. Nothing in it decides anything.</summary>
public static class AdoptList
{
    /// <summary>Common practice, no source: a larger list is no workbook to type in.</summary>
    private const int MostRows = 10_000;

    /// <exception cref="IOException">A file cannot be written; the list is as it was.</exception>
    public static AdoptResult Run(AdoptRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        try
        {
            OutputGuard.NewFilesOnly.For([request.List], register: null).Require(request.OutFile);
        }
        catch (OutputRefusedException e)
        {
            return Refuse(e.Message);
        }
        var book = Read(request.List);
        if (book.Unreadable is { } why)
            return Refuse($"{request.List}: unreadable: {why}");
        if (book.FilledRows > MostRows)
            return Refuse($"{request.List}: it has more than 10,000 rows; give it in parts");
        var (map, faults) = ReadMap(request);
        if (faults.Count > 0)
            return new AdoptResult { Refused = [.. faults.Select(f => $"{request.MapFile}: {f}")] };
        var mapping = new ListMapping(book, request.Rules, map);
        Ask(request, mapping);
        var written = map is null && request.MapFile is not null ? Write(request.MapFile, MapFile.Write(mapping)) : null;
        var open = ListToSettle.Necessary(mapping);
        return open.Count > 0
            ? new AdoptResult { ToSettle = open, MapWritten = written }
            : Take(request, mapping) with
            {
                MapWritten = written,
            };
    }

    private static AdoptResult Take(AdoptRequest request, ListMapping mapping)
    {
        var list = TakeList.Of(mapping, request.AsOf);
        if (list.Record.Items.Count == 0)
            return Refuse($"{request.List}: no row of it is about an item of kit");
        using var buffer = new MemoryStream();
        CaptureWorkbook.Write(buffer, [], list.Record, forNextVisit: true, request.Rules);
        return new AdoptResult
        {
            Written = Write(request.OutFile, buffer.ToArray()),
            Items = Count(list.Record),
            LeftOut = [.. list.LeftOut.Select(r => (r.Sheet, r.Row, r.Why))],
            Remarks =
            [
                .. mapping.UnknownHeadings.Select(h => $"the map names a column '{h}' that the list does not have"),
                .. ListToSettle.Other(mapping),
                .. list.Remarks,
            ],
        };
    }

    private static void Ask(AdoptRequest request, ListMapping mapping)
    {
        if (request.Ask is not { } ask)
            return;
        var questions = new ListQuestions(mapping);
        while (questions.Next() is { } question)
            questions.Answer(question, ask(new AdoptQuestion(question.Text, question.Choices, question.Proposed)));
    }

    private static List<(string Kind, int Items)> Count(ExaminationRecord record) =>
        [
            .. record
                .Items.GroupBy(i => i.Category ?? "of no known kind", StringComparer.Ordinal)
                .Select(g => (g.Key, g.Count()))
                .OrderByDescending(g => g.Item2)
                .ThenBy(g => g.Key, StringComparer.Ordinal),
        ];

    private static ListBook Read(string path)
    {
        var name = Path.GetFileName(path);
        try
        {
            var file = new FileInfo(path);
            return Directory.Exists(path) ? ListBook.Refused(name, "it is a folder; give one list at a time")
                : !file.Exists ? ListBook.Refused(name, "there is no such file")
                : file.Length == 0 ? ListBook.Refused(name, "the file is empty")
                : file.Length > CsvRecordReader.MostBytes ? ListBook.Refused(name, "the file is larger than 32 MiB")
                : ListBookReader.Read(File.ReadAllBytes(path), name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return ListBook.Refused(name, "the file cannot be opened: " + e.Message);
        }
    }

    /// <returns>Neither map nor faults where none is given, or it is still to be written.</returns>
    private static (ListMap? Map, IReadOnlyList<string> Faults) ReadMap(AdoptRequest request)
    {
        if (request.MapFile is not { } path || !File.Exists(path))
            return (null, []);
        try
        {
            return MapFile.Read(File.ReadAllBytes(path), request.Rules);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, ["the file cannot be opened: " + e.Message]);
        }
    }

    private static string Write(string path, byte[] content)
    {
        OutputGuard.NewFilesOnly.Write(path, content);
        return path;
    }

    private static AdoptResult Refuse(string why) => new() { Refused = [why] };
}
