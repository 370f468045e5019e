using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Commands;

/// <summary>Takes a firm's own list of kit into a capture workbook. Nothing in it decides anything.</summary>
public static class AdoptList
{
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
        var (map, faults) = ReadMap(request);
        if (faults.Count > 0)
            return new AdoptResult { Refused = [.. faults.Select(f => $"{request.MapFile}: {f}")] };
        var (list, unreadable) = OpenedList.Open(request.List, map, request.Rules);
        if (list is null)
            return Refuse($"{request.List}: {unreadable}");
        Ask(request, list.Mapping);
        var written = map is null && request.MapFile is not null ? Write(request.MapFile, MapFile.Write(list.Mapping)) : null;
        var open = list.ToSettle;
        return open.Count > 0
            ? new AdoptResult { ToSettle = open, MapWritten = written }
            : Take(request, list) with
            {
                MapWritten = written,
            };
    }

    private static AdoptResult Take(AdoptRequest request, OpenedList list)
    {
        var adopted = list.Take(request.AsOf);
        if (adopted.Record.Items.Count == 0)
            return Refuse($"{request.List}: no row of it is about an item of kit");
        return new AdoptResult
        {
            Written = Write(request.OutFile, list.Workbook(adopted)),
            Items = adopted.Kinds,
            LeftOut = [.. adopted.LeftOut.Select(r => (r.Sheet, r.Row, r.Why))],
            Remarks = adopted.Remarks,
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
