using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>An invented visit with one row of each kind, two where the order counts.</summary>
internal static class SampleVisit
{
    /// <summary>The same visit where all was found fit, for documents that say so.</summary>
    public static VisitToRemember Fit(this VisitToRemember visit) =>
        visit with
        {
            Outcomes = [.. visit.Outcomes.Select(o => o with { Outcome = "fit", Codes = [], NeverReleasable = false })],
        };

    public static VisitToRemember Of(string? reference, string note = "pulled thread", string id = "HB-014") =>
        new(
            new ExaminationRecord
            {
                Visit = new()
                {
                    Reference = reference,
                    Regime = "gb-loler",
                    Employer = new() { Name = "Larkfield Tree Care" },
                    Premises = new() { Name = "The yard" },
                    ExaminedOn = new(2026, 5, 11),
                },
                People =
                [
                    new()
                    {
                        Id = "ex1",
                        Name = "A. Examiner",
                        Address = "1 Long Lane",
                        Qualifications = "none invented",
                    },
                ],
                Items =
                [
                    new()
                    {
                        Id = id,
                        Category = "harness",
                        Description = "climbing harness",
                        Maker = "Invented Works",
                        Model = "H1",
                        Serial = "0007",
                        Manufactured = new PartialDate(2024, 2, null),
                        Status = ItemStatus.InUse,
                    },
                    new()
                    {
                        Id = $"{id}-B",
                        Category = "rope-bridge",
                        PartNumber = "SP-11",
                        OwnersMark = "blue",
                        FittedTo = id,
                    },
                ],
                Limits =
                [
                    new()
                    {
                        Maker = "Invented Works",
                        Model = "H1",
                        PartNumber = "SP-11",
                        Source = new()
                        {
                            Title = "Booklet",
                            Revision = "3",
                            Page = "12",
                        },
                    },
                ],
                Examinations =
                [
                    new()
                    {
                        Item = $"{id}-B",
                        Examiner = "ex1",
                        Basis = Basis.SixMonth,
                        Conclusion = Conclusion.Withdraw,
                        Observations =
                        [
                            new()
                            {
                                Criterion = "cover-cut",
                                StateAsTyped = "defect",
                                State = ObservedState.Defect,
                                Note = note,
                                Photo = "photos/1.jpg",
                            },
                            new()
                            {
                                Criterion = "stiffness",
                                StateAsTyped = "clear",
                                State = ObservedState.Clear,
                            },
                        ],
                    },
                ],
                Renewals =
                [
                    new()
                    {
                        Item = id,
                        RemovedPart = $"{id}-A",
                        FittedPart = $"{id}-B",
                        DoneOn = new LocalDate(2026, 5, 10),
                    },
                ],
            },
            Encoding.UTF8.GetBytes($"{{\"visit\":\"{reference}\",\"note\":\"{note}\"}}"),
            [
                new(id, "withdraw", ["W9"]) { ExaminedOn = new LocalDate(2026, 5, 11), Parts = [$"{id}-B"] },
                new($"{id}-B", "withdraw", ["W1", "W6"]) { ExaminedOn = new LocalDate(2026, 5, 11), NeverReleasable = true },
            ]
        );
}
