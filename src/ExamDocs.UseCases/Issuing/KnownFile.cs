using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>What other records told, as it is written within <c>document.json</c>: rows of records in the record's own format.</summary>
/// <param name="Rows">Remedies, renewals, releases, quarantines and limits, as a record of nothing else.</param>
/// <param name="ReleasedBy">The name of who gave each release, in the order of the rows.</param>
/// <param name="Wholes">Items elsewhere, each with so many of the limits, in the order of the rows.</param>
/// <param name="OtherNames">Null in a document of version 0.2.1 or earlier.</param>
internal sealed record KnownFile(
    JsonElement Rows,
    IReadOnlyList<string?> ReleasedBy,
    IReadOnlyList<PastFitting> Fittings,
    IReadOnlyList<KnownFile.Part> Parts,
    IReadOnlyList<KnownFile.Whole> Wholes,
    IReadOnlyList<KnownFile.Question> Questions,
    IReadOnlyList<Respelling> Respellings,
    IReadOnlyList<AnswerFault> AnswerFaults,
    IReadOnlyList<string> Elsewhere,
    IReadOnlyList<string> LeftOut,
    RegisterConsulted? Asked,
    IReadOnlyList<OtherName>? OtherNames = null
)
{
    internal sealed record Part(
        string Id,
        string Whole,
        Outcome Outcome,
        string? PartNumber,
        LocalDate? Until,
        LocalDate? NextBy,
        string? Document
    );

    internal sealed record Whole(string Id, string Part, int Limits);

    internal sealed record Question(
        string Item,
        string Other,
        LocalDate On,
        EarlierState State,
        string? Document,
        string Member,
        string? Here,
        string? There,
        bool OtherOwner
    );

    public static KnownFile Of(History h)
    {
        var record = new ExaminationRecord
        {
            Format = ExaminationRecord.FormatName,
            Remedies = h.Remedies,
            Renewals = h.Renewals,
            Disposals = h.Quarantines,
            Releases = [.. h.Releases.Select(r => r.Release)],
            Limits = [.. h.Wholes.SelectMany(w => w.Limits)],
        };
        return new KnownFile(
            JsonSerializer.Deserialize<JsonElement>(JsonRecordWriter.Write(record)),
            [.. h.Releases.Select(r => r.By)],
            h.Fittings,
            [.. h.Parts.Select(p => new Part(p.Id, p.Whole, p.Outcome, p.PartNumber, p.Until, p.NextBy, p.Document))],
            [.. h.Wholes.Select(w => new Whole(w.Id, w.Part, w.Limits.Count))],
            [
                .. h.Questions.Select(q => new Question(
                    q.ItemId,
                    q.OtherId,
                    q.On,
                    q.State,
                    q.Document,
                    q.Member,
                    q.Here,
                    q.There,
                    q.OtherOwner
                )),
            ],
            h.Respellings,
            h.AnswerFaults,
            h.Elsewhere,
            h.LeftOut,
            h.Asked,
            h.OtherNames
        );
    }

    /// <exception cref="JsonException">A value is none that a document can have.</exception>
    public History Read(History withdrawn)
    {
        var read = JsonRecordReader.Read(JsonSerializer.SerializeToUtf8Bytes(Rows), "document.json");
        if (
            read is not { Record: { People: [], Items: [], Examinations: [] } record }
            || record.Releases.Count != ReleasedBy.Count
            || Wholes.Any(w => w.Limits < 0)
            || Wholes.Sum(w => (long)w.Limits) != record.Limits.Count
            || read.Findings.Any(f => f.Code is "INT001" or "INT002" or "INT003" or "INT008")
        )
            throw new JsonException("what is known is no record");
        var limits = new Queue<MakersLimits>(record.Limits);
        return withdrawn with
        {
            Remedies = record.Remedies,
            Renewals = record.Renewals,
            Quarantines = record.Disposals,
            Fittings = Fittings,
            Releases = [.. record.Releases.Zip(ReleasedBy, (release, by) => new PastRelease(release.Item ?? "", by, release))],
            Parts =
            [
                .. Parts.Select(p => new PartElsewhere(p.Id, p.Whole, p.Outcome)
                {
                    PartNumber = p.PartNumber,
                    Until = p.Until,
                    NextBy = p.NextBy,
                    Document = p.Document,
                }),
            ],
            Wholes =
            [
                .. Wholes.Select(w => new WholeElsewhere(w.Id, w.Part, [.. Enumerable.Range(0, w.Limits).Select(_ => limits.Dequeue())])),
            ],
            Questions =
            [
                .. Questions.Select(q => new IdentityQuestion(q.Item, q.Other, q.On, q.State)
                {
                    Document = q.Document,
                    Member = q.Member,
                    Here = q.Here,
                    There = q.There,
                    OtherOwner = q.OtherOwner,
                }),
            ],
            Respellings = Respellings,
            AnswerFaults = AnswerFaults,
            Elsewhere = Elsewhere,
            LeftOut = LeftOut,
            Asked = Asked,
            OtherNames = OtherNames ?? [],
        };
    }
}
