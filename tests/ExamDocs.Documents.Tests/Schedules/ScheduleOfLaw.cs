using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Report;
using NodaTime;

namespace ExamDocs.Documents.Tests.Schedules;

/// <summary>A value that a report must have.</summary>
/// <param name="Place">Where.</param>
/// <param name="Words">As printed, made here from the record and not by the templates.</param>
internal sealed record Wanted(ParagraphPlace Place, string Words);

/// <summary>
/// For each paragraph that a regime's data ask for, what a report must say of an item and where. A paragraph that is not known here
/// fails the test that walks the schedule: a new one needs its values.
/// </summary>
internal sealed class ScheduleOfLaw(DeterminedVisit visit, DeterminedItem item)
{
    private const ParagraphPlace Once = ParagraphPlace.Once;
    private const ParagraphPlace Group = ParagraphPlace.Group;
    private const ParagraphPlace Line = ParagraphPlace.Line;
    private const ParagraphPlace Block = ParagraphPlace.Block;

    private Visit Visit => visit.Record.Visit;

    private Examination Examination => item.Examination!;

    private bool IsFirst => Examination.Basis is Basis.FirstUse or Basis.Installation;

    public IEnumerable<Wanted> Of(Regime regime, string paragraph) =>
        (regime.Id, paragraph) switch
        {
            ("gb-loler" or "ni-loler", _) => Lifting(paragraph),
            ("gb-wah", "12(6)") => Result(),
            ("eu-en365", "a" or "b") => Texts(Group, item.Item.Maker, item.Item.Model),
            ("eu-en365", "c") => Texts(Line, item.Item.Serial ?? item.Item.OwnersMark),
            ("eu-en365", "d") => [new(Line, Made)],
            ("eu-en365", "e") => [new(Line, $"Purchased: {Day(item.Item.Purchased) ?? "not recorded"}")],
            ("eu-en365", "f") => [new(Line, $"First used: {FirstUsed}")],
            ("eu-en365", "g") => Noted(),
            ("eu-en365", "h") => [.. Examined(), .. Reason(), .. Defects()],
            ("eu-en365", "i") => Author(),
            ("eu-en365", "j") => Next(),
            ("de", "14(7) type" or "8.3.1(2) occasion") => Reason(),
            ("de", "14(7) scope") =>
            [
                .. Examination
                    .Observations.Where(o => o.State is not ObservedState.NotExamined)
                    .Select(o => new Wanted(Group, o.Criterion!.Replace('-', ' '))),
            ],
            ("de", "14(7) result") => Result(),
            ("de", "14(7) signature") => Author(),
            ("fr", "R4323-100") => Author(),
            ("fr", "R4323-101") => Result(),
            ("fr", "R4323-102") => [new(Once, "To be annexed to the safety register")],
            ("fr", "3") =>
            [
                .. Texts(Line, item.Item.Id, item.Item.Declaration?.Reference ?? "Declaration of conformity: not recorded"),
                new(Group, item.LimitsSources.Count == 0 ? "not recorded" : item.LimitsSources[0].Title!),
            ],
            ("au-nz", "9") => [.. Author(), .. Examined(), .. Result()],
            ("us", "Z359.2") => [.. Author(), .. Result()],
            ("us", "Title 8") => Examined(),
            _ => throw new NotSupportedException($"what {regime.Id} asks for in {paragraph} is not known to the test"),
        };

    private IEnumerable<Wanted> Lifting(string paragraph) =>
        paragraph switch
        {
            "1" => Texts(Once, Visit.Employer!.Name, Visit.Employer.Address),
            "2" => Texts(Once, Visit.Premises!.Address),
            "3" =>
            [
                .. Texts(Line, item.Item.Id, item.Item.Serial, item.Item.OwnersMark),
                new(Line, Made),
                .. Texts(Group, item.Item.Maker, item.Item.Model, item.Item.PartNumber),
            ],
            "4" => [new(Line, Day(item.LastExamined) ?? (IsFirst ? "first" : "not known"))],
            "5" => Texts(
                Group,
                item.Item.SafeWorkingLoad is { Value: { } value } load ? Load(value, load.Unit!) : "not marked",
                item.Item.SafeWorkingLoad?.Basis
            ),
            "6(a)" => IsFirst ? [new(Block, "first thorough examination")] : [],
            "6(b)" => IsFirst ? [new(Block, Safe)] : [],
            "7(a)" => IsFirst ? [] : Reason(),
            "7(b)" => IsFirst ? [] : [new(Group, Safe)],
            "8(a)" or "8(b)" or "8(c)" => Defects(),
            "8(d)" => Next(),
            "8(e)" => Examination.Tests.Count == 0
                ? [new(Group, "no tests recorded")]
                : Texts(Group, [.. Examination.Tests.SelectMany(t => new[] { t.Description, t.Result })]),
            "8(f)" => Examined(),
            "9" => Author(),
            "10" => Texts(Once, Signer.Name, Signer.Address),
            "11" => [new(Once, Day(Visit.ReportedOn!.Value))],
            _ => throw new NotSupportedException($"what the law on lifting asks for in {paragraph} is not known to the test"),
        };

    private string Safe => item.Outcome is Outcome.Withdraw ? "Would be safe to operate: no" : "Would be safe to operate: yes";

    private string Made => Day(item.Item.Manufactured) ?? "not known";

    private string FirstUsed => item.Item.NeverUsed is true ? "never used" : Day(item.Item.FirstUsed) ?? "not recorded";

    private Person Signer => visit.Person(Examination.AuthenticatedBy ?? Examination.Examiner)!;

    private IEnumerable<Wanted> Author()
    {
        var author = visit.Person(Examination.Author ?? Examination.Examiner)!;
        return Texts(
            Once,
            author.Name,
            author.Address,
            author.Qualifications,
            author.SelfEmployed is true ? "Self-employed" : author.Employer!.Name
        );
    }

    private IEnumerable<Wanted> Examined() => [new(Group, Day(item.ExaminedOn!.Value))];

    private IEnumerable<Wanted> Result() =>
        [
            new(
                Line,
                item.Outcome switch
                {
                    Outcome.Fit => item.WasDueBy is null && !IsFirst ? "In service" : "May stay in service",
                    Outcome.FitUntil => "May stay in service until",
                    _ => "Not to be used",
                }
            ),
        ];

    private IEnumerable<Wanted> Next() =>
        item.NextExaminationBy is { } next ? [new(Line, Day(next))] : [new(Line, "none set: the item is not to be used")];

    private IEnumerable<Wanted> Noted() =>
        Texts(Line, [.. Examination.Observations.Where(o => o.State is ObservedState.Noted).Select(o => o.Note)]);

    private IEnumerable<Wanted> Reason() =>
        [
            new(
                Group,
                Examination.Basis switch
                {
                    Basis.SixMonth => "6 months",
                    Basis.TwelveMonth => "12 months",
                    Basis.Scheme => Examination.Scheme!.Reference!,
                    Basis.Exceptional => Examination.Event!.What!,
                    _ => "first",
                }
            ),
        ];

    private IEnumerable<Wanted> Defects() =>
        Examination.Defects.Count == 0
            ? item.Outcome is Outcome.Withdraw
                ? []
                : [new(Group, "Defects: none recorded that is or could become a danger")]
            : Examination.Defects.SelectMany(d =>
                Texts(Block, d.Part, d.Description, d.Remedy, d.Danger is Danger.Now ? "is a danger now" : Day(d.BecomesDangerOn!.Value))
            );

    private static IEnumerable<Wanted> Texts(ParagraphPlace place, params string?[] texts) =>
        texts.OfType<string>().Select(t => new Wanted(place, t));

    private static string Load(decimal value, string unit) =>
        (value, unit) is (1, "persons") ? "1 person" : $"{value.ToString("0.#####", CultureInfo.InvariantCulture)} {unit}";

    private static string Day(LocalDate day) => day.ToString("d MMM uuuu", CultureInfo.InvariantCulture);

    private static string? Day(PartialDate? date) =>
        date switch
        {
            null => null,
            { IsWholeDay: true } => Day(date.Earliest),
            { Month: not null } => date.Earliest.ToString("MMM uuuu", CultureInfo.InvariantCulture),
            _ => date.ToString(),
        };
}
