using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Intake.Yard.Wording;

/// <inheritdoc />
internal sealed partial class English : YardPhrases
{
    public override string Language => "en";

    public override Terms Terms => Terms.English;

    public override string Title => "Record a visit";
    public override string NoScript =>
        "This phone or browser runs no scripts from files, so the form cannot be used here. Put the same file on any "
        + "https address of your own firm and open it from there, or open the file in a browser that runs scripts. "
        + "Nothing is sent anywhere: the form works offline once it is open.";
    public override string Opening =>
        "Opening the form. If this line stays, this browser runs no scripts from files: open the same file from any "
        + "https address of your own firm.";
    public override string Caution => "The maker's instructions, local law and the competent person's judgement come first.";
    public override string Tabs => "Pages of the form";
    public override string Visit => "Visit";
    public override string Items => "Items";
    public override string Save => "Save";
    public override string Choose => "choose";
    public override string Yes => "Yes";
    public override string No => "No";
    public override string TakeBack => "Take back";
    public override string More => "More, where it is needed";
    public override string Missing => "{0} is missing";
    public override string NotANumber => "This is not a number in plain digits, or can be read as two. It is kept as you typed it.";

    public override string OnlyHere => "Only on this phone. Not in any file yet.";
    public override string ChangedSince => "Only on this phone: what you changed since {0}.";
    public override string SavedAs => "Given to the browser as {0}. Look that the file is there before you leave the phone.";
    public override string NotKept =>
        "NOT KEPT: the browser could not store what you typed last. Save the file now, and do not close this page " + "before.";
    public override string MayBeCleared =>
        "The browser has not promised to keep this. It may delete it when space is short: save files often.";
    public override string NoBase =>
        "This browser keeps nothing for this page, so that what you typed would be lost. Open the form in an ordinary window, not a "
        + "private one, or open the same file from any https address of your own firm.";
    public override string NoLocks =>
        "This browser cannot keep two tabs of the form apart. Open the file itself in an up-to-date browser, or open "
        + "it from any https address of your own firm.";
    public override string OpenElsewhere =>
        "This form is open in another tab. Go on there, or close that tab: the form then opens here with everything " + "that was typed.";

    public override string Reference => "Reference of this visit: {0}. It was made once and stays; a file sent twice counts once.";
    public override string Regime => "Regime";
    public override string EmployerName => "Employer: name";
    public override string EmployerAddress => "Employer: address";
    public override string PremisesName => "Premises: name";
    public override string PremisesAddress => "Premises: address";
    public override string HiredFromName => "Hired from: name";
    public override string HiredFromAddress => "Hired from: address";
    public override string EnforcingAuthorityName => "Enforcing authority: name";
    public override string EnforcingAuthorityAddress => "Enforcing authority: address";
    public override string ExaminedOn => "Day examined";
    public override string ReportedOn => "Day of the report";
    public override string DayNotAfter =>
        "The form knows an examination of {0}. Of several examinations of an item, the one of the latest day decides: "
        + "look whether this day is right.";
    public override string Examiner => "Examiner";
    public override string Basis => "Why examined";
    public override string SchemeReference => "Scheme: reference";
    public override string SchemeAuthor => "Scheme: drawn up by";
    public override string SchemeMonths => "Scheme: months";
    public override string EventWhat => "What happened";
    public override string EventOn => "When it happened";
    public override string AddPerson => "Add a person";
    public override string Person => "Person {0}";
    public override string PersonName => "Name";
    public override string PersonAddress => "Address";
    public override string PersonQualifications => "Qualifications";
    public override string SelfEmployed => "Self-employed?";
    public override string PersonsEmployer => "Employer of this person: name, where not self-employed";
    public override string PersonsEmployerAddress => "Employer of this person: address";
    public override string ToItems => "To the items";

    public override string NoItems => "There are no items yet.";
    public override string NotBegun => "not begun";
    public override string AllRecorded => "all recorded";
    public override string Answered => "{0} of {1} answered";
    public override string AddItem => "Add an item";
    public override string NewItem => "New item";
    public override string Twice => "Two items have the id {0}. Each needs one of its own.";
    public override string ToTheEnd => "To the end";
}
