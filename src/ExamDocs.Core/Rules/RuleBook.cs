using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Rules.Conflicts;
using ExamDocs.Core.Rules.Dates;
using ExamDocs.Core.Rules.Identity;
using ExamDocs.Core.Rules.Measurement;
using ExamDocs.Core.Rules.Particulars;
using ExamDocs.Core.Rules.Renewals;

namespace ExamDocs.Core.Rules;

/// <summary>All checks, in the order in which they run: a new one is one file and one line here.</summary>
public static class RuleBook
{
    private static readonly Rule<VisitCase>[] OfVisit =
    [
        new EmployerIsNamed(),
        new PremisesAreNamed(),
        new ReportDateIsStated(),
        new OwnerHiredFromIsNamed(),
        new RegimeIsKnown(),
        new RegimeIsConfirmed(),
        new ReportedAfterExamined(),
        new NothingIsInTheFuture(),
        new ItemReferredToExists(),
        new PersonReferredToExists(),
        new VisitNamesExaminerAlone(),
        new SerialIsUnique(),
        new ItemIdIsUnique(),
        new LaterVersionHasEveryItem(),
    ];

    private static readonly Rule<RowCase<Person>>[] OfPerson =
    [
        new MakerOfReportIsNamed(),
        new PersonsEmployerIsNamed(),
        new PersonIdIsUnique(),
    ];

    private static readonly Rule<ItemCase>[] OfItem =
    [
        new ItemIsDescribed(),
        new CategoryIsKnown(),
        new ItemCanBeTold(),
        new SerialIsKnown(),
        new IdentityHasOneAlphabet(),
        new EarlierItemIsTold(),
        new SpellingIsAsBefore(),
        new AnswerAboutIdentityIsSound(),
        new EarlierIdIsKnown(),
        new RemovedPartIsOff(),
        new PartIsWhereItWas(),
        new ItemWasPresented(),
        new ManufactureDateIsKnown(),
        new EarlierExaminationIsKnown(),
        new ManufacturedBeforePurchased(),
        new PurchasedBeforeFirstUse(),
        new ManufacturedBeforeFirstUse(),
        new FirstUseBeforeExamination(),
        new ManufacturedBeforeExamination(),
        new ManufacturedBeforeLastExamination(),
        new ManufacturedBeforeObsolete(),
        new LastExaminationBeforeThisOne(),
        new LastExaminationIsTheLatestKnown(),
        new NeverUsedMeansNeverUsed(),
        new NeverUsedKitShowsNoUse(),
        new NeverUsedKitIsNotInUse(),
        new LimitsDoNotCompete(),
        new PartNumberPicksLimits(),
        new LimitsAreNotMissed(),
        new KitOfMetalHasTimeLimit(),
        new StorageIsNotTheOnlyLimit(),
        new PartIsOnOneItem(),
        new PartIsNotOnItself(),
        new ItemIsExaminedOnceADay(),
        new EarlierDefectIsAnswered(),
    ];

    private static readonly Rule<RowCase<MakersLimits>>[] OfLimits =
    [
        new LimitsNameTheirSource(),
        new LimitsNameRevisionAndPage(),
        new UnobtainableIsExplained(),
        new LimitsAgreeWithThemselves(),
        new LimitsApplyToSomething(),
    ];

    private static readonly Rule<ExaminationCase>[] OfExamination =
    [
        new ExaminerConcludes(),
        new DateExaminedIsStated(),
        new OwnRegimeIsKnown(),
        new OwnIntervalIsNotLong(),
        new SafeWorkingLoadIsStated(),
        new LoadIsMarked(),
        new PurposeIsStated(),
        new RegimeSuitsItem(),
        new LiftingKitStandsUnderLifting(),
        new BasisIsStated(),
        new BasisFitsPurpose(),
        new SchemeIsNamed(),
        new EventIsNamed(),
        new EventBeforeExamination(),
        new CriterionBelongsToCategory(),
        new CriterionIsAnsweredOnce(),
        new StateIsAllowed(),
        new StateHasNote(),
        new DefectAnsweredIsEntered(),
        new DefectIsDescribed(),
        new DangerIsStated(),
        new LaterDangerHasTime(),
        new RemedyIsStated(),
        new DefectMatchesObservation(),
        new LaterDefectIsNotClear(),
        new LaterDangerIsNotFarOff(),
        new EmployerWasTold(),
        new AuthorityIsNamed(),
        new TestIsDescribed(),
        new ReadingIsPossible(),
        new StationIsMeasuredOnce(),
        new ReadingsAreCrossed(),
        new ToleranceIsKnown(),
        new MeanIsClearOfLimit(),
        new NoStationStandsOut(),
        new TrendKeepsClearOfLimit(),
        new ProfilesAreComparable(),
        new ExaminedInTime(),
        new ExaminedBeforeFirstService(),
        new NextDateIsAfterThisOne(),
        new NextDateIsNotTooLate(),
        new DestroyedKitIsNotFit(),
        new ExaminerIsIndependent(),
    ];

    private static readonly Rule<RowCase<Renewal>>[] OfRenewal =
    [
        new RenewalIsComplete(),
        new RenewalBeforeExamination(),
        new FittedPartSaysSo(),
        new PersonWhoRenewsIsSupervised(),
        new RemovedPartIsAccountedFor(),
        new FittedPartIsPermitted(),
        new FittedPartIsInDate(),
        new FittedPartIsNotWithdrawn(),
        new FittedPartIsExaminedInPlace(),
        new RetyingIsAllowed(),
    ];

    private static readonly Rule<RowCase<Release>>[] OfRelease =
    [
        new ReleaseIsComplete(),
        new ReleaseIsInTime(),
        new ReleaseIsPossible(),
        new ReleaseNamesAWithdrawal(),
    ];

    private static readonly Rule<WithdrawnCase>[] OfWithdrawn = [new ConclusionIsNotKinder()];

    /// <summary>Every rule, by code.</summary>
    public static IReadOnlyList<IRule> All { get; } =
    [
        .. OfVisit
            .Concat<IRule>(OfPerson)
            .Concat(OfItem)
            .Concat(OfLimits)
            .Concat(OfExamination)
            .Concat(OfRenewal)
            .Concat(OfRelease)
            .Concat(OfWithdrawn)
            .OrderBy(r => r.Info.Code, StringComparer.Ordinal),
    ];

    /// <param name="context">The record.</param>
    /// <param name="withdrawn">The items that have a reason to withdraw, with these reasons: a conclusion may not be kinder.</param>
    internal static IReadOnlyList<Finding> Check(RecordContext context, IReadOnlyDictionary<ItemCase, IReadOnlyList<Reason>> withdrawn)
    {
        var found = new List<Finding>();
        Run(OfVisit, [context.Visit], found);
        Run(OfPerson, context.People, found);
        Run(OfLimits, context.Limits, found);
        Run(OfItem, context.Items, found);
        Run(OfExamination, context.Examinations, found);
        Run(OfRenewal, context.Renewals, found);
        Run(OfRelease, context.Releases, found);
        Run(OfWithdrawn, [.. withdrawn.SelectMany(w => w.Key.Deciding.Select(e => new WithdrawnCase(e, w.Value)))], found);
        return found;
    }

    private static void Run<T>(Rule<T>[] rules, IReadOnlyList<T> subjects, List<Finding> found)
        where T : class, ICase
    {
        foreach (var subject in subjects)
        {
            foreach (var rule in rules)
                rule.Check(subject, found);
        }
    }
}
