using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Photos;

/// <summary>What can be wrong with the photos that observations name. The answer stands; only the picture is missing.</summary>
public static class PhotoRules
{
    private const string OwnLimit = "our own limit, no outside source";

    public static readonly RuleInfo NotFound = new(
        "INT042",
        Severity.Warning,
        "Every photo named is there",
        "A picture that is missing cannot be printed as evidence.",
        $"Type the file's name as it is in the record's folder, or put the file there.",
        "record format examdocs/1"
    );

    public static readonly RuleInfo OutsideFolder = new(
        "INT043",
        Severity.Warning,
        "Every photo lies in the record's folder",
        "A record from somebody else could otherwise bring any picture of this computer into print.",
        $"Copy the photo into the folder of the record, or a folder within it, and name it from there: photos/14.jpg.",
        "record format examdocs/1"
    );

    public static readonly RuleInfo NotPrintable = new(
        "INT044",
        Severity.Warning,
        "Every photo is a whole JPEG or PNG picture",
        "A picture of another kind, or a damaged one, may print as something else than was photographed, or not at all.",
        $"Open the picture in an image program and save it as JPEG.",
        "ISO/IEC 10918-1 (JPEG); ISO/IEC 15948 (PNG)"
    );

    public static readonly RuleInfo TooLarge = new(
        "INT045",
        Severity.Warning,
        "Every photo is small enough to be read",
        "A small file can unpack to more than a computer holds.",
        $"Save the picture smaller: at most 40 MiB, 100 million pixels, and 20,000 pixels to a side.",
        OwnLimit
    );

    public static readonly RuleInfo TooMany = new(
        "INT046",
        Severity.Warning,
        "A record names no more photos than can be read in a while",
        "Reading pictures without end would hold up the record forever.",
        $"Divide the record, or leave out photos: at most 500 different ones, 2 GiB and 6,000 million pixels together.",
        OwnLimit
    );

    public static readonly RuleInfo NotTheOneTaken = new(
        "INT090",
        Severity.Warning,
        "A photo named by its SHA-256 is the photo that was taken",
        "A picture that was edited or exchanged on its way is no evidence of what was seen.",
        $"Copy the photo once more from the camera, or from the archive that the form saved.",
        "our own naming, no outside source"
    );

    public static IReadOnlyList<RuleInfo> All { get; } = [NotFound, OutsideFolder, NotPrintable, TooLarge, TooMany, NotTheOneTaken];
}
