using System.Globalization;
using ExamDocs.Core;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.Histories.Making;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>
/// A register is listed as a whole by ways that save time. For every item they say what asking the register about that item alone says,
/// with all visits that name it, and all rules.
/// </summary>
public sealed class ListedAlikeTests : IDisposable
{
    /// <summary>Histories in one register: their firms, ids and serial numbers are alike and get in one another's way.</summary>
    private const int Together = 3;

    private readonly string _folder = Directory.CreateTempSubdirectory("examdocs-listed-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Each_item_stands_as_it_does_when_it_is_asked_about_alone()
    {
        var (compared, standings) = (0, new HashSet<Standing>());
        for (var seed = Effort.After + 1; seed <= Effort.After + Effort.Of(16, 3_000); seed += Together)
        {
            var place = Path.Combine(_folder, FormattableString.Invariant($"{seed}.db"));
            foreach (var history in Enumerable.Range(seed, Together))
            {
                using var imported = new Imported(place, _folder);
                foreach (var run in Chronicle.Of(history, prints: false))
                    imported.Run(run);
            }
            Issue(place, seed);
            var last = LastDay(place);
            foreach (var today in new[] { last, last.PlusMonths(4), last.PlusMonths(14) })
            {
                using var register = DocumentRegister.OpenToRead(place, today);
                var (alone, listed) = (Alone(register, today), new ItemsOnRecord(register, today) { WithoutObservations = true }.Every());
                Assert.True(alone.Select(Said).SequenceEqual(listed.Select(Said)), Difference(seed, today, alone, listed));
                compared += alone.Count;
                standings.UnionWith(alone.Select(i => i.Standing));
            }
            File.Delete(place);
        }
        Console.WriteLine(FormattableString.Invariant($"{compared} items compared"));
        Assert.Equal(Enum.GetValues<Standing>().Order(), standings.Order());
    }

    private static string Difference(int seed, LocalDate today, IReadOnlyList<FoundItem> alone, IReadOnlyList<FoundItem> listed)
    {
        var (one, other) = (alone.Select(Said).ToList(), listed.Select(Said).ToList());
        return FormattableString.Invariant($"seed {seed}, {today}\nalone only:\n")
            + string.Join("\n", one.Except(other).Take(5))
            + "\nlisted only:\n"
            + string.Join("\n", other.Except(one).Take(5));
    }

    private static List<FoundItem> Alone(DocumentRegister register, LocalDate today)
    {
        var (records, all) = (new RememberedRecords(register), new ItemsOnRecord(register, today).All);
        var (knowledge, logged) = (new RegisterKnowledge(register), register.Visits.AsLogged(records.Read));
        var things = new KnownThings(new DocumentsOnRecord(register), Asked, all, today);
        return [.. things.Shown(things.Of(all))];

        KnownToday Asked(Item row, ExaminationRecord like)
        {
            var record = new ExaminationRecord
            {
                Visit = new Visit
                {
                    Employer = like.Visit.Employer,
                    HiredFrom = like.Visit.HiredFrom,
                    Regime = like.Visit.Regime,
                    ExaminedOn = today,
                },
                Items = [row with { FittedTo = null, Status = null }],
                Limits = like.Limits,
            };
            var known = WhatIsKnown.Of(record, logged.Touching(record).Select(knowledge.Known));
            var item = Determine.Visit(record, [], known.History, today).Items[0];
            var withdrawals = item.Reasons.Where(r => r.Code is ['W', ..] and not "W9").ToList();
            return new(
                [.. known.Lines.Where(l => !l.IsWhole).Select(l => (l.Visit, l.OtherId))],
                [.. withdrawals.Select(r => r.Text)],
                withdrawals.Exists(r => r.Code is "W11"),
                [.. known.History.Quarantines.Where(q => q.Item == row.Id).Select(q => q.On!.Value)],
                [.. item.Findings.Where(f => f.Code is "IDN011").Select(f => f.Message.Text)],
                [.. known.History.Questions.Select(q => q.OtherId)],
                known.History.Parts
            );
        }
    }

    /// <summary>Reports of some visits, one of them replaced by a second; others have none.</summary>
    private static void Issue(string place, int seed)
    {
        using var register = DocumentRegister.Open(place, new LocalDate(2026, 11, 30));
        var dice = Dice.For(seed, 1);
        var outcomes = register.Visits.Outcomes().Where(o => o.Outcome.Item is not null).ToLookup(o => o.Visit.Visit, o => o.Outcome);
        foreach (var visit in outcomes.Where(_ => dice.Chance(70)))
        {
            var items = visit.Select(o => o.Item!).Distinct(StringComparer.Ordinal).ToList();
            var first = Print([]);
            if (dice.Chance(20))
                Print([new Replacement(first.Number, "a name was misspelt")]);

            IssuedDocument Print(IReadOnlyList<Replacement> replaces) =>
                register.Publish(
                    register.Take(
                        new DocumentRequest(
                            'R',
                            2026,
                            "report",
                            string.Create(CultureInfo.InvariantCulture, $"{visit.Key} {replaces.Count}"),
                            items,
                            Folder: null
                        )
                        {
                            Visit = visit.Key,
                            KnownUpTo = register.Visits.Latest,
                            Replaces = replaces,
                        }
                    ),
                    [.. "%PDF-1.7"u8],
                    1,
                    "{}"
                );
        }
    }

    private static LocalDate LastDay(string place)
    {
        using var register = DocumentRegister.OpenToRead(place);
        return register.Visits.All().Max(v => v.ExaminedOn) ?? new LocalDate(2026, 11, 30);
    }

    private static string Said(FoundItem item) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{item.Id} of {item.Owner}, {item.Employer}, {item.Premises}: {item.Standing}, {item.Why}; through {item.UsableThrough}, next {item.NextBy}, due {item.FallsDue}; {item.Item}; "
        )
        + string.Join(
            " | ",
            item.History.Select(v => $"{v} {string.Join(' ', v.Codes)} {string.Join(", ", v.Documents.Select(d => d.ToString()))}")
        );
}
