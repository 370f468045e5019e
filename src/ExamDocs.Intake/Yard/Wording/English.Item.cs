namespace ExamDocs.Intake.Yard.Wording;

/// <content>Words about one item, and about the end of the visit.</content>
internal sealed partial class English
{
    public override string Id => "Id";
    public override string IdHint => "As the owner marks it; no two alike.";
    public override string Category => "Category";
    public override string Description => "Description";
    public override string Maker => "Maker";
    public override string Model => "Model";
    public override string PartNumber => "Part number";
    public override string Serial => "Serial";
    public override string OwnersMark => "Owner's mark";
    public override string Manufactured => "Manufactured";
    public override string Purchased => "Purchased";
    public override string FirstUsed => "First used";
    public override string ObsoleteOn => "End of service printed on it";
    public override string LastExamined => "Last thorough examination";
    public override string PartialDate => "2026-05-20, or 2026-05, or 2026";
    public override string Purpose => "Purpose";
    public override string Status => "Where it is";
    public override string FittedTo => "Fitted to";
    public override string Load => "Safe working load";
    public override string Unit => "Unit";
    public override string NotMarked => "none is marked";
    public override string LoadBasis => "Where the load is taken from";
    public override string Particulars => "Particulars of this item";
    public override string Limits => "Maker's limits";
    public override string LimitsHint =>
        "The form knows no limits of this maker and model. Type what the maker's instructions say, and nothing else.";
    public override string SourceTitle => "Maker's document: title";
    public override string SourceRevision => "Maker's document: revision";
    public override string SourcePage => "Maker's document: page";
    public override string MaxUseYears => "Years from first use at most";
    public override string MaxStorageYears => "Years stored before first use at most";
    public override string MaxAgeYears => "Years from manufacture at most";
    public override string IntervalMonths => "Months between examinations at most";
    public override string NominalDiameterMm => "Nominal diameter, mm";
    public override string DiameterTolerancePercent => "Tolerance of the diameter, %";
    public override string NoLimit => "The maker states that there is no time limit";
    public override string LastExaminedOn => "Last examined: {0}.";
    public override string NoDay => "day not recorded";
    public override string FitThen => "The examiner's conclusion was: fit.";
    public override string WithdrawnThen =>
        "The examiner WITHDREW it then. Unless it was released since, it stays out of service. This form cannot release it.";
    public override string WithdrawnLast => "withdrawn last time";
    public override string NoConclusionThen => "No conclusion was recorded.";
    public override string DefectsThen => "Defects recorded then:";
    public override string NextItem => "Next item: {0}";
    public override string SaveAndGoOn => "Save a file. {0}";

    public override string Criteria => "Criteria";
    public override string HowExamined => "{0} of {1}. Means: {2}";
    public override string LastTime => "Last time, {0}: {1}";
    public override string AddNote => "Add a note";
    public override string Note => "Note";
    public override string NoteNeeded => "This answer needs a note.";
    public override string NoteMissing => "{0}: the note is missing";
    public override string Unanswered => "{0} not answered: {1}";
    public override string AddPhoto => "Add a photo";
    public override string Photo => "Photo of this finding";
    public override string RemovePhoto => "Remove the photo";
    public override string PhotoRefused => "This picture could not be read or kept. Take it again as JPEG.";
    public override string TheDefect => "The defect";
    public override string DefectPart => "Part";
    public override string DefectDescription => "What is wrong";
    public override string DefectRemedy => "Repair, renewal or alteration needed";
    public override string DefectMissing => "{0}: not recorded of the defect: {1}";
    public override string DefectKept =>
        "What you wrote about a defect is kept here, but is not in the file while the answer is not defect.";
    public override string Danger => "Is it a danger to persons?";
    public override string DangerNow => "It is a danger now";
    public override string DangerLater => "It could become a danger";
    public override string BecomesDangerOn => "Could become a danger by";
    public override string BecomesDangerHint => "The day before is the last day of use.";
    public override string ImminentRisk => "Existing or imminent risk of serious personal injury?";
    public override string ToldWhom => "Whom you told";
    public override string ToldHow => "How you told them";
    public override string ToldOn => "When you told them";

    public override string Diameters => "Diameters";
    public override string DiametersHint => "Two readings at right angles at each station. The position is counted from the reference end.";
    public override string Station => "Station {0}, in mm";
    public override string Position => "Position";
    public override string FirstReading => "Reading 1";
    public override string SecondReading => "Reading 2";
    public override string LastMean => "Mean last time: {0} mm";
    public override string AddStation => "Add a station";

    public override string Conclusion => "Conclusion";
    public override string ConclusionAsked => "May it stay in service?";
    public override string ConclusionHint => "Your own conclusion. The program checks it, and is never kinder than you.";
    public override string ConclusionMissing => "The conclusion is missing";
    public override string Fit => "Fit";
    public override string Withdraw => "Withdraw";
    public override string NextBy => "Next examination at the latest";
    public override string NextByHint => "Only to make it sooner than law and maker ask.";
    public override string OwnRegime => "Regime of this item, where it is not the visit's";
    public override string TestDescription => "Test made";
    public override string TestResult => "Result of the test";
    public override string Hardware => "Hardware it runs on";
    public override string Ground => "Ground";
    public override string Use => "Use";
    public override string UserMassKg => "Mass of the user, kg";

    public override string StillMissing => "What is still missing";
    public override string NothingMissing => "Every item has its answers and its conclusion.";
    public override string DecidesNothing => "This form decides nothing. examdocs check FILE says what is wrong and what comes out.";
    public override string PhotosWithin =>
        "{0} answers have a photo. The file is an archive (.zip): unpack it, and keep the photos beside the record.";
    public override string SaveFile => "Save the file";
    public override string SendIt =>
        "Each file holds the whole visit so far: the last one is enough. Send it to whoever issues the documents.";
    public override string StartAnother => "Start another visit from this form";
    public override string OtherVisits => "Other visits on this phone";
}
