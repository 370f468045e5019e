using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A record in which every member of the format is filled in, so that none can be forgotten.</summary>
internal static class FullRecord
{
    public static ExaminationRecord Make() =>
        new()
        {
            Format = ExaminationRecord.FormatName,
            Visit = new Visit
            {
                Reference = "V-1",
                Regime = "gb-loler",
                Employer = APartyOf("Alder Works") with { Telephone = "0000 555 0100" },
                Premises = APartyOf("Birch Yard"),
                HiredFrom = APartyOf("Cedar Hire"),
                EnforcingAuthority = APartyOf("Authority"),
                ExaminedOn = new(2026, 5, 11),
                ReportedOn = new(2026, 5, 12),
                Examiner = "ex1",
                Basis = Basis.SixMonth,
            },
            People =
            [
                new Person
                {
                    Id = "ex1",
                    Name = "A. Elm",
                    Address = "1 Lane",
                    Qualifications = "Ten years",
                    SelfEmployed = false,
                    Employer = APartyOf("Elm and Ash"),
                },
            ],
            Items =
            [
                new Item
                {
                    Id = "H",
                    Category = "harness",
                    Description = "harness",
                },
                new Item
                {
                    Id = "B",
                    Category = "rope-bridge",
                    Description = "bridge; long",
                    Maker = "Oakline",
                    Model = "M1",
                    PartNumber = "00-7",
                    Serial = "0012",
                    OwnersMark = "blue",
                    Manufactured = new PartialDate(2024),
                    Purchased = new PartialDate(2024, 2),
                    FirstUsed = new PartialDate(2024, 2, 29),
                    NeverUsed = false,
                    Cleanings = 3,
                    ObsoleteOn = new PartialDate(2034, 2, 1),
                    SafeWorkingLoad = new Load
                    {
                        Value = 150.5m,
                        Unit = "kg",
                        NotMarked = true,
                        Basis = "declaration",
                    },
                    MarkedStrength = new Load
                    {
                        Value = 25,
                        Unit = "kN",
                        NotMarked = true,
                        Basis = "leaflet",
                    },
                    Standards = ["EN 358", "EN 813"],
                    FittedTo = "H",
                    LastExamined = new PartialDate(2025, 11),
                    Purpose = Purpose.LiftsPersons,
                    Declaration = new Declaration { Reference = "D-01", On = new(2024, 4, 1) },
                    TransferEvidence = "report 7",
                    Status = ItemStatus.InUse,
                    Formerly = "B-old",
                    NotTheSameAs =
                    [
                        new DifferentItem
                        {
                            Id = "b",
                            Document = "R-2025-000003",
                            Because = "serial 0013 on that one",
                        },
                        new DifferentItem { Id = "B.", Because = "both are here" },
                    ],
                },
            ],
            Limits =
            [
                new MakersLimits
                {
                    Maker = "Oakline",
                    Model = "M1",
                    PartNumber = "00-7",
                    Source = new LimitsSource
                    {
                        Title = "Manual",
                        Revision = "2",
                        Page = "7",
                    },
                    MaxUseYears = 5,
                    MaxStorageYears = 2,
                    MaxAgeYears = 10,
                    MaxCleanings = 30,
                    EventEndsService = true,
                    IntervalMonths = 6,
                    NoLimit = true,
                    Unobtainable = new Unobtainable { Sought = "by letter", UseUntil = new(2027, 5, 1) },
                    NominalDiameterMm = 11.1m,
                    DiameterTolerancePercent = 10,
                    PermittedParts = ["P1", "P2"],
                    MinTailMm = 60,
                    Retying = Retying.CompetentPerson,
                    Description = "Bridge of the model",
                    SafeWorkingLoad = new Load
                    {
                        Value = 140,
                        Unit = "kg",
                        NotMarked = true,
                        Basis = "instructions",
                    },
                    MarkedStrength = new Load
                    {
                        Value = 22.5m,
                        Unit = "kN",
                        NotMarked = true,
                        Basis = "instructions",
                    },
                    Standards = ["EN 358", "EN 813"],
                },
            ],
            Examinations =
            [
                Latest(),
                new Examination
                {
                    Item = "B",
                    ExaminedOn = new(2025, 11, 10),
                    Conclusion = Conclusion.Fit,
                    Observations = [Seen("heat")],
                    Defects = [Found()],
                    Tests = [Tested()],
                    Diameters = [Measured()],
                },
            ],
            Renewals =
            [
                new Renewal
                {
                    Item = "H",
                    RemovedPart = "B0",
                    FittedPart = "B",
                    Reason = "worn",
                    DoneBy = "ex1",
                    SupervisedBy = "ex1",
                    DoneOn = new(2026, 5, 11),
                    RetiedBy = "ex1",
                },
            ],
            Remedies =
            [
                new Remedy
                {
                    Item = "H",
                    What = "new buckle",
                    DoneBy = "maker",
                    DoneOn = new(2026, 5, 1),
                    Evidence = "invoice",
                },
            ],
            Releases =
            [
                new Release
                {
                    Item = "H",
                    Document = "Q-2025-000007",
                    By = "ex1",
                    On = new(2026, 5, 11),
                    Grounds = "repaired",
                    WithdrawnOn = new(2025, 11, 10),
                    Because = ReleaseReason.MadeGood,
                },
            ],
            Disposals =
            [
                new Disposal
                {
                    Item = "H",
                    Action = DisposalAction.SentForRepair,
                    By = "employer",
                    On = new(2026, 5, 11),
                },
            ],
        };

    private static Examination Latest() =>
        new()
        {
            Item = "B",
            Examiner = "ex1",
            Author = "ex1",
            AuthenticatedBy = "ex1",
            Regime = "gb-loler",
            Basis = Basis.Exceptional,
            Scheme = new Scheme
            {
                Reference = "S-1",
                Author = "A. Elm",
                Months = 3,
            },
            Event = new ExceptionalEvent { What = "fall", On = new(2026, 5, 2) },
            ExaminedOn = new(2026, 5, 11),
            NextBy = new(2026, 8, 11),
            Observations = [Seen("cover-cut")],
            Diameters = [Measured()],
            Tests = [Tested()],
            Defects = [Found()],
            Exposure = new Exposure
            {
                Hardware = "ring",
                Ground = "sandy",
                UserMassKg = 82.5m,
                Use = "daily",
            },
            Conclusion = Conclusion.Withdraw,
        };

    private static Observation Seen(string criterion) =>
        new()
        {
            Criterion = criterion,
            StateAsTyped = "defect",
            State = ObservedState.Defect,
            Note = "seen",
            Photo = "photos/1.jpg",
        };

    private static DiameterStation Measured() => new() { PositionMm = 50.5m, ReadingsMm = [11.1m, 11.05m, 11m, 11m, 11m, 11m, 10.9m] };

    private static TestMade Tested() => new() { Description = "hang test", Result = "held" };

    private static Defect Found() =>
        new()
        {
            Criterion = "cover-cut",
            Part = "cover",
            Description = "cut",
            Danger = Danger.Later,
            BecomesDangerOn = new(2026, 8, 1),
            Remedy = "renew",
            ImminentRisk = true,
            Notified = new Notification
            {
                Whom = "employer",
                How = "by hand",
                On = new(2026, 5, 11),
            },
        };

    private static Party APartyOf(string name) => new() { Name = name, Address = name + " address" };
}
