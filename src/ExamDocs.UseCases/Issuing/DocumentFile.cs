using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Writes and reads <c>document.json</c>: what a document rests on, as examdocs-document/1.</summary>
internal static class DocumentFile
{
    public const string FormatName = "examdocs-document/1";

    /// <summary>The most that is read, bytes, inclusive.</summary>
    public const int MaxBytes = JsonRecordReader.MaxBytes;

    /// <summary>As for rule files; besides, every member must be there.</summary>
    private static readonly JsonSerializerOptions Strict = new(RuleJson.Options) { RespectRequiredConstructorParameters = true };

    public static byte[] Write(DocumentBasis basis) => JsonSerializer.SerializeToUtf8Bytes(Whole.Of(basis), Strict);

    /// <returns>Null where it is none, or anything of it cannot be read: a member missing, doubled or unknown, a value of another
    /// kind.</returns>
    public static DocumentBasis? Read(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            return utf8.Length <= MaxBytes ? JsonSerializer.Deserialize<Whole>(utf8.Span, Strict)?.Basis() : null;
        }
        catch (Exception e) when (e is JsonException or ArgumentException)
        {
            return null;
        }
    }

    private sealed record Whole(
        string Format,
        string Number,
        string Kind,
        IReadOnlyList<string> Items,
        LocalDate IssuedOn,
        LocalDate AsOf,
        string Language,
        string Version,
        bool PerItem,
        Reading Reading,
        LetterheadAsPrinted? Letterhead,
        ElectronicSignature? Signature,
        CopiedReport? CopyOf,
        IReadOnlyList<ReplacedDocument> Replaces,
        IReadOnlyList<Hold> Withdrawals,
        IReadOnlyList<Visited> Examinations,
        KnownFile? Known = null,
        string? Evidence = null,
        IReadOnlyList<string>? OwnRules = null
    )
    {
        public static Whole Of(DocumentBasis b) =>
            new(
                FormatName,
                b.Number,
                b.Kind,
                b.Items,
                b.IssuedOn,
                b.AsOf,
                b.Language.Tag,
                b.Version,
                b.PerItem,
                new Reading(b.Reading.Metres, b.Reading.SignFactor),
                LetterheadAsPrinted.Of(b.Letterhead),
                b.Signature,
                b.CopyOf,
                b.Replaces,
                [.. b.History.Withdrawals.Select(Hold.Of)],
                [.. b.History.Examinations.Select(Visited.Of)],
                KnownFile.Of(b.History),
                b.Evidence,
                b.OwnRules.Count > 0 ? b.OwnRules : null
            );

        /// <exception cref="JsonException">A value is none that a document can have.</exception>
        public DocumentBasis Basis() =>
            !string.Equals(Format, FormatName, StringComparison.Ordinal)
                ? throw new JsonException(Format)
                : new DocumentBasis
                {
                    Number = new DocumentIdentity(Kind, Number, IssuedOn, Version).Number,
                    Kind = Kind,
                    Items = Items,
                    IssuedOn = IssuedOn,
                    AsOf = AsOf,
                    Version = Version,
                    PerItem = PerItem,
                    Language = Templates.Shared.Wording.Language.Find(Language) ?? throw new JsonException(Language),
                    Reading = new ReadingDistance(Reading.Metres, Reading.SignFactor),
                    Letterhead = Letterhead?.Read(),
                    Signature = Signature,
                    CopyOf = CopyOf,
                    Evidence = Evidence,
                    OwnRules = OwnRules ?? [],
                    Replaces = Replaces,
                    History = WithKnown(
                        new([.. Withdrawals.Select(w => w.Read())]) { Examinations = [.. Examinations.Select(e => e.Read())] }
                    ),
                };

        /// <summary>Documents of earlier versions have no more than withdrawals and examinations.</summary>
        private History WithKnown(History history) => Known?.Read(history) ?? history;
    }

    private sealed record Reading(decimal Metres, decimal SignFactor);

    /// <remarks>Maker, model, serial and whether it is of another visit are read in documents of earlier versions, and count for
    /// nothing.</remarks>
    private sealed record Hold(
        string Item,
        string? Document,
        LocalDate On,
        IReadOnlyList<string> Codes,
        bool NeverReleasable,
        IReadOnlyList<string> Parts,
        IReadOnlyList<string>? Documents = null,
        bool OfThisVisit = false,
        string? Maker = null,
        string? Model = null,
        string? Serial = null,
        bool OfAnotherVisit = false
    )
    {
        public static Hold Of(PastWithdrawal w) =>
            new(w.ItemId, w.Document, w.On, w.Codes, w.NeverReleasable, w.Parts, w.Documents, w.IsOfThisVisit);

        public PastWithdrawal Read() =>
            new(Item, Document, On, Codes, NeverReleasable)
            {
                Parts = Parts,
                Documents = Documents ?? [],
                IsOfThisVisit = OfThisVisit,
            };
    }

    /// <summary>An earlier examination with its remedies and renewals, as a record of nothing else.</summary>
    private sealed record Visited(string Item, LocalDate On, string? Document, JsonElement Record)
    {
        public static Visited Of(PastExamination e)
        {
            var record = new ExaminationRecord
            {
                Format = ExaminationRecord.FormatName,
                Examinations = [e.Examination],
                Remedies = e.Remedies,
                Renewals = e.Renewals,
            };
            return new(e.ItemId, e.On, e.Document, JsonSerializer.Deserialize<JsonElement>(JsonRecordWriter.Write(record)));
        }

        public PastExamination Read()
        {
            var read = JsonRecordReader.Read(JsonSerializer.SerializeToUtf8Bytes(Record), "document.json");
            return
                read
                    is {
                        Record: { Examinations: [var examination], People: [], Items: [], Limits: [], Releases: [], Disposals: [] } record
                    }
                && !read.Findings.Any(f => f.Code is "INT001" or "INT002" or "INT003" or "INT008")
                ? new(Item, On, Document, examination) { Remedies = record.Remedies, Renewals = record.Renewals }
                : throw new JsonException("an earlier examination is no record");
        }
    }
}
