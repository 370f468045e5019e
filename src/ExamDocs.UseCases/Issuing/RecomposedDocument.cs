using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Comparing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Makes a document once more from the data embedded in it, to compare the two.</summary>
internal static partial class RecomposedDocument
{
    /// <summary>The jobs of the visit that have its kind and its items; more than one where items share an id.</summary>
    /// <remarks>The embedded data have no photos. Which photos were printed follows from the findings of reading; their captions are
    /// printed again.</remarks>
    public static IReadOnlyList<DocumentJob> Jobs(DocumentContents contents, DeterminedVisit visit) =>
        Jobs(contents.Basis, visit, PlacesOfPhotos(contents.Record), LeftOut(contents.Basis, visit));

    /// <summary>The jobs of a visit that are in the form of a document: its kind, items, language and head.</summary>
    /// <param name="basis">The document.</param>
    /// <param name="visit">The visit that it was made from, or another version of it.</param>
    /// <param name="photos">The photos to print.</param>
    /// <param name="leftOut">What a schedule may go without.</param>
    public static IReadOnlyList<DocumentJob> Jobs(
        DocumentBasis basis,
        DeterminedVisit visit,
        Func<Observation, PhotoPrint?> photos,
        IEnumerable<LeftOutItems> leftOut
    )
    {
        var jobs = Of(ComposeReports.MostItems);
        // Earlier versions had all items in one report.
        return jobs.Count == 0 && basis.IsReportOfSeveral && visit.Items.Count > ComposeReports.MostItems ? Of(int.MaxValue) : jobs;

        IReadOnlyList<DocumentJob> Of(int mostInReport) =>
            InTheFormOf(
                basis,
                leftOut
                    .SelectMany(left => ComposeDocuments.Of(visit, basis.PerItem, basis.Reading, photos, left, mostInReport).Jobs)
                    .Where(j => IsLike(basis, j))
            );
    }

    /// <summary>Jobs of its kind and items, in its language, under its head; of a copy, the copy.</summary>
    public static IReadOnlyList<DocumentJob> InTheFormOf(DocumentBasis basis, IEnumerable<DocumentJob> jobs) =>
        [
            .. jobs.Select(j => basis.CopyOf is { } original ? j.Copy?.Invoke(original) : j)
                .OfType<DocumentJob>()
                .Select(j => j with { Language = basis.Language, Letterhead = basis.Letterhead }),
        ];

    /// <summary>The places where photos were printed, without the photos.</summary>
    public static Func<Observation, PhotoPrint?> PlacesOfPhotos(ReadResult read)
    {
        var photos = PrintedPhotos(read);
        return o => photos.Contains(o) ? Blank : null;
    }

    /// <summary>A schedule of all its items, and one that names as not reported what the document is not about.</summary>
    public static LeftOutItems[] LeftOutByName(DocumentBasis basis, DeterminedVisit visit) =>
        LeftOut(basis, visit)[0] is { Items.Count: > 0 } left ? [LeftOutItems.None, left] : [LeftOutItems.None];

    private static bool IsLike(DocumentBasis basis, DocumentJob job) =>
        string.Equals(job.Type.Kind, basis.Kind, StringComparison.Ordinal)
        && job.Items.Select(i => i.Item.Id ?? "").SequenceEqual(basis.Items, StringComparer.Ordinal);

    /// <summary>
    /// The items that a schedule may have left out. An item that cannot be printed whole is left out and named as not reported, unless
    /// its id cannot be printed either: so a schedule is tried with the name and without.
    /// </summary>
    public static LeftOutItems[] LeftOut(DocumentBasis basis, DeterminedVisit visit)
    {
        var reported = basis.Items.ToHashSet(StringComparer.Ordinal);
        var isEvidence = string.Equals(basis.Kind, DocumentTypes.Evidence.Kind, StringComparison.Ordinal);
        var isSchedule = basis.IsReportOfSeveral || (isEvidence && !basis.PerItem);
        var all = visit.Everything.Where(i => isEvidence || (i.MayBeReported && visit.Items.Contains(i))).ToList();
        var left = new LeftOutItems([.. all.Where(i => isSchedule && !reported.Contains(i.Item.Id ?? ""))]);
        return isSchedule && visit.Everything.Count() > basis.Items.Count ? [left, left with { AreNamed = false }] : [left];
    }

    /// <summary>The page. It shows the document's own pictures: their places are compared, the pictures themselves are not.</summary>
    /// <param name="job">The job.</param>
    /// <param name="basis">What the document was made from.</param>
    /// <param name="renderer">Makes the page.</param>
    /// <param name="pictures">The photos and the logo that the document shows, in their order.</param>
    public static async Task<string> HtmlAsync(
        DocumentJob job,
        DocumentBasis basis,
        DocumentRenderer renderer,
        IReadOnlyList<DrawnPicture> pictures
    )
    {
        var identity = new DocumentIdentity(basis.Kind, basis.Number, basis.IssuedOn, basis.Version)
        {
            EvidenceFile = basis.Evidence,
            Replaces = [.. basis.Replaces.Select(r => (r.Number, r.Reason))],
            Signature = basis.Signature,
        };
        var html = await job.RenderAsync(renderer, identity);
        if (Picture().Count(html) < pictures.Count && job.Letterhead is { } head)
            html = await (job with { Letterhead = head with { Logo = Blank } }).RenderAsync(renderer, identity);
        if (Picture().Count(html) != pictures.Count)
            return html;
        var at = 0;
        return Picture().Replace(html, found => Shown(pictures[at++], found));
    }

    private static string Shown(DrawnPicture picture, Match found)
    {
        var size = found.Groups["size"].Success
            ? string.Create(CultureInfo.InvariantCulture, $" width=\"{picture.WidthPx}\" height=\"{picture.HeightPx}\"")
            : "";
        return $"src=\"data:image/jpeg;base64,{Convert.ToBase64String(picture.Jpeg.Span)}\"{found.Groups["words"].Value}{size}";
    }

    private static readonly byte[] Mark = Encoding.ASCII.GetBytes("a picture that is not within");

    private static PhotoPrint Blank { get; } = new(Mark, 1, 1);

    [GeneratedRegex(
        """src="data:image/jpeg;base64,YSBwaWN0dXJlIHRoYXQgaXMgbm90IHdpdGhpbg=="(?<words> alt="[^"]*")(?<size> width="1" height="1")?""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Picture();

    private static HashSet<Observation> PrintedPhotos(ReadResult read)
    {
        var faulty = read.Findings.Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        var printed =
            from e in read.Record!.Examinations.Index()
            from o in e.Item.Observations.Index()
            where
                !string.IsNullOrWhiteSpace(o.Item.Photo)
                && !faulty.Contains(string.Create(CultureInfo.InvariantCulture, $"/examinations/{e.Index}/observations/{o.Index}/photo"))
            select o.Item;
        return new HashSet<Observation>(printed, ReferenceEqualityComparer.Instance);
    }
}
