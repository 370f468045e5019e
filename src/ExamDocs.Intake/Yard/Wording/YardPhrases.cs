using System.Reflection;
using System.Text.Json;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Intake.Yard.Wording;

/// <summary>
/// Words of the form for the yard. Another language is another class of this kind. {0}, {1} and {2} are gaps that the page fills.
/// </summary>
public abstract partial class YardPhrases
{
    private static readonly YardPhrases[] All = [new English(), new German(), new French()];

    public static YardPhrases English => All[0];

    /// <summary>The words of this language; English where there are none.</summary>
    /// <param name="tag">For example de.</param>
    public static YardPhrases In(string tag) => Array.Find(All, p => string.Equals(p.Language, tag, StringComparison.Ordinal)) ?? English;

    /// <summary>The tag of the language, for example en.</summary>
    public abstract string Language { get; }

    /// <summary>Names of categories, criteria and questions in the language.</summary>
    public abstract Terms Terms { get; }

    public abstract string StateWord(ObservedState state);
    public abstract string BasisWord(Basis basis);
    public abstract string PurposeWord(Purpose purpose);
    public abstract string StatusWord(ItemStatus status);
    public abstract string MeansWord(Means means);

    public abstract string Title { get; }
    public abstract string NoScript { get; }
    public abstract string Opening { get; }
    public abstract string Caution { get; }
    public abstract string Tabs { get; }
    public abstract string Visit { get; }
    public abstract string Items { get; }
    public abstract string Save { get; }
    public abstract string Choose { get; }
    public abstract string Yes { get; }
    public abstract string No { get; }
    public abstract string TakeBack { get; }
    public abstract string More { get; }
    public abstract string Missing { get; }
    public abstract string NotANumber { get; }

    public abstract string OnlyHere { get; }
    public abstract string ChangedSince { get; }
    public abstract string SavedAs { get; }
    public abstract string NotKept { get; }
    public abstract string MayBeCleared { get; }
    public abstract string NoBase { get; }
    public abstract string NoLocks { get; }
    public abstract string OpenElsewhere { get; }

    public abstract string Reference { get; }
    public abstract string Regime { get; }
    public abstract string EmployerName { get; }
    public abstract string EmployerAddress { get; }
    public abstract string PremisesName { get; }
    public abstract string PremisesAddress { get; }
    public abstract string HiredFromName { get; }
    public abstract string HiredFromAddress { get; }
    public abstract string EnforcingAuthorityName { get; }
    public abstract string EnforcingAuthorityAddress { get; }
    public abstract string ExaminedOn { get; }
    public abstract string ReportedOn { get; }
    public abstract string DayNotAfter { get; }
    public abstract string Examiner { get; }
    public abstract string Basis { get; }
    public abstract string SchemeReference { get; }
    public abstract string SchemeAuthor { get; }
    public abstract string SchemeMonths { get; }
    public abstract string EventWhat { get; }
    public abstract string EventOn { get; }
    public abstract string AddPerson { get; }
    public abstract string Person { get; }
    public abstract string PersonName { get; }
    public abstract string PersonAddress { get; }
    public abstract string PersonQualifications { get; }
    public abstract string SelfEmployed { get; }
    public abstract string PersonsEmployer { get; }
    public abstract string PersonsEmployerAddress { get; }
    public abstract string ToItems { get; }

    public abstract string NoItems { get; }
    public abstract string NotBegun { get; }
    public abstract string AllRecorded { get; }
    public abstract string Answered { get; }
    public abstract string AddItem { get; }
    public abstract string NewItem { get; }
    public abstract string Twice { get; }
    public abstract string ToTheEnd { get; }

    /// <summary>Every phrase by its name as the page asks for it, for example addItem.</summary>
    public IReadOnlyDictionary<string, string> ByName() =>
        typeof(YardPhrases)
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.PropertyType == typeof(string))
            .ToDictionary(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name), p => (string)p.GetValue(this)!, StringComparer.Ordinal);
}
