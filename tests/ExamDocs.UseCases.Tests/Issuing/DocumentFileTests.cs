using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>document.json read again is what was written, and nothing else can be read.</summary>
public sealed class DocumentFileTests
{
    private static readonly DocumentBasis Whole = new()
    {
        Number = "Q-2026-000003",
        Kind = "quarantine-label",
        Items = ["HB-1", ""],
        IssuedOn = new(2026, 5, 12),
        AsOf = new(2026, 5, 11),
        Language = Language.German,
        Version = "1.0.0",
        PerItem = true,
        Reading = new ReadingDistance(2, 50),
        Letterhead = new Letterhead
        {
            Name = "Alderfen Tree Care",
            Address = "1 Alder Row",
            Contact = "yard",
            Footer = "est. 1990 {x}",
            Colour = "#123456",
            Logo = new PhotoPrint(new byte[] { 1 }, 300, 200),
        },
        CopyOf = new CopiedReport("R-2026-000001", "ab"),
        Signature = new ElectronicSignature("Ida", "CA", "01", new string('A', 64), true),
        Replaces = [new ReplacedDocument("Q-2026-000001", "slip of the pen")],
        History = new([
            new PastWithdrawal("HB-1", "Q-2025-000007", new LocalDate(2025, 3, 4), ["W1", "W9"], true)
            {
                Parts = ["P"],
                Documents = ["Q-2025-000007", "N-2025-000003"],
                IsOfThisVisit = true,
            },
        ])
        {
            Remedies =
            [
                new Remedy
                {
                    Item = "HB-1",
                    What = "stitched",
                    DoneOn = new LocalDate(2025, 4, 2),
                },
            ],
            Renewals = [new Renewal { Item = "HB-1", FittedPart = "P2" }],
            Releases =
            [
                new PastRelease(
                    "HB-1",
                    "Ida Alderfen",
                    new Release
                    {
                        Item = "HB-1",
                        WithdrawnOn = new LocalDate(2025, 3, 4),
                        Because = ReleaseReason.RecordedInError,
                        Grounds = "another harness",
                    }
                ),
            ],
            Quarantines =
            [
                new Disposal
                {
                    Item = "HB-1",
                    Action = DisposalAction.Quarantined,
                    On = new LocalDate(2025, 3, 5),
                },
            ],
            Fittings = [new PastFitting("P", "HB-1", new LocalDate(2025, 3, 4), FittingWord.TakenOff)],
            Parts = [new PartElsewhere("P3", "HB-1", Outcome.Fit) { NextBy = new LocalDate(2025, 9, 4), PartNumber = "SP-1" }],
            Wholes = [new WholeElsewhere("HB-9", "P3", [new MakersLimits { Maker = "Fenwright", PermittedParts = ["SP-2"] }])],
            Questions =
            [
                new IdentityQuestion("HB-1", "HB-01", new LocalDate(2025, 3, 4), EarlierState.Held)
                {
                    Member = "serial",
                    Here = "S",
                    There = "T",
                    OtherOwner = true,
                    Document = "Q-2025-000009",
                },
            ],
            Respellings = [new Respelling("HB-1", "serial", "s")],
            AnswerFaults = [new AnswerFault("HB-1", "/formerly", AnswerFaultKind.Unknown)],
            LeftOut = ["HB-2"],
            Elsewhere = ["HB-3"],
            OtherNames = [new OtherName("HB-0", "HB-1")],
            Asked = new RegisterConsulted("a1b2", new LocalDate(2025, 1, 2)),
            Examinations =
            [
                new PastExamination(
                    "HB-1",
                    new LocalDate(2025, 3, 4),
                    "R-2025-000002",
                    new Examination
                    {
                        Item = "HB-1",
                        ExaminedOn = new LocalDate(2025, 3, 4),
                        Conclusion = Conclusion.Withdraw,
                        Diameters = [new DiameterStation { PositionMm = 50, ReadingsMm = [11.1m, 10.9m] }],
                        Defects =
                        [
                            new Defect
                            {
                                Criterion = "marking",
                                Danger = Danger.Later,
                                BecomesDangerOn = new LocalDate(2025, 9, 1),
                            },
                        ],
                    }
                )
                {
                    Remedies =
                    [
                        new Remedy
                        {
                            Item = "HB-1",
                            What = "bound",
                            DoneOn = new LocalDate(2025, 4, 1),
                        },
                    ],
                    Renewals = [new Renewal { Item = "HB-1", RemovedPart = "P" }],
                },
            ],
        },
    };

    public static TheoryData<string> KnownLists =>
        [
            .. typeof(History)
                .GetProperties()
                .Where(p => p.PropertyType.IsAssignableTo(typeof(System.Collections.IEnumerable)))
                .Select(p => p.Name),
        ];

    /// <summary>What is left out here would be left out of the decision when the document is verified.</summary>
    [Theory]
    [MemberData(nameof(KnownLists))]
    public void Nothing_that_is_known_from_before_is_left_out(string name)
    {
        var property = typeof(History).GetProperty(name)!;
        var read = DocumentFile.Read(DocumentFile.Write(Whole))!;
        Assert.NotEmpty((System.Collections.IEnumerable)property.GetValue(Whole.History)!);
        Assert.Equal(
            ((System.Collections.IEnumerable)property.GetValue(Whole.History)!).Cast<object>().Count(),
            ((System.Collections.IEnumerable)property.GetValue(read.History)!).Cast<object>().Count()
        );
    }

    [Fact]
    public void Read_again_it_is_what_was_written()
    {
        var written = DocumentFile.Write(Whole);
        var read = DocumentFile.Read(written);
        Assert.NotNull(read);
        Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(DocumentFile.Write(read)));
        Assert.Equal(
            (Whole.Number, Whole.AsOf, Whole.Language, Whole.Letterhead!.Footer),
            (read.Number, read.AsOf, read.Language, read.Letterhead!.Footer)
        );
        Assert.Equal(10.9m, read.History.Examinations[0].Examination.Diameters[0].ReadingsMm[1]);
        Assert.Equal(Danger.Later, read.History.Examinations[0].Examination.Defects[0].Danger);
        Assert.Equal("bound", read.History.Examinations[0].Remedies[0].What);
        Assert.Equal("P", read.History.Examinations[0].Renewals[0].RemovedPart);
        Assert.Equal(["W1", "W9"], read.History.Withdrawals[0].Codes);
        Assert.Equal(["Q-2025-000007", "N-2025-000003"], read.History.Withdrawals[0].Documents);
        Assert.Equal(
            (ReleaseReason.RecordedInError, "Ida Alderfen"),
            (read.History.Releases[0].Release.Because, read.History.Releases[0].By)
        );
        Assert.Equal("SP-2", Assert.Single(read.History.Wholes[0].Limits[0].PermittedParts!));
        Assert.Equal(Whole.History.Questions, read.History.Questions);
        Assert.Equal(Whole.History.Parts, read.History.Parts);
        Assert.Equal(Whole.History.Asked, read.History.Asked);
    }

    [Theory]
    [InlineData("examdocs-document/1", "examdocs-document/2")]
    [InlineData("\"number\": \"Q-", "\"number\": \"R-")]
    [InlineData("\"language\": \"de\"", "\"language\": \"xx\"")]
    [InlineData("\"language\": \"de\"", "\"language\": null")]
    [InlineData("\"asOf\": \"2026-05-11\"", "\"asOf\": \"11 May 2026\"")]
    [InlineData("\"asOf\": \"2026-05-11\"", "\"asOf\": \"2026-05-11\", \"asOf\": \"2026-05-12\"")]
    [InlineData("\"perItem\": true", "\"perItem\": true, \"unknown\": 1")]
    [InlineData("\"perItem\": true", "\"perItem\": 1")]
    [InlineData("\"perItem\": true,", "")]
    [InlineData("\"examinations\"", "\"examination\"")]
    [InlineData("\"signFactor\": 50", "\"signFactor\": 0")]
    [InlineData("#123456", "#ffffff")]
    [InlineData("\"positionMm\"", "\"positionInch\"")]
    public void Anything_else_is_not_read(string from, string to)
    {
        var written = Encoding.UTF8.GetString(DocumentFile.Write(Whole));
        Assert.Contains(from, written, StringComparison.Ordinal);
        Assert.Null(DocumentFile.Read(Encoding.UTF8.GetBytes(written.Replace(from, to, StringComparison.Ordinal))));
    }
}
