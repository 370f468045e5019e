using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using ExamDocs.Register.Work;
using ExamDocs.Templates;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Working;

/// <summary>What is done in a stage that prints, for one visit.</summary>
internal enum PrintStage
{
    /// <summary>Labels and notices of what may not be used: dangers come first.</summary>
    Warnings,

    /// <summary>All that rests on nothing else of the visit.</summary>
    Documents,

    /// <summary>Labels that say when to examine again: one is held back where its item's report is.</summary>
    DueLabels,
}

/// <summary>
/// Into which parts a job is divided: stage 0 decides, three stages print for each visit in the order of their days, the last takes back
/// what corrected records no longer justify. A slice is told by a document's kind and items, so that each belongs to one slice whoever
/// asks.
/// </summary>
internal static class JobStages
{
    /// <summary>How many documents a slice has, about: some seconds of work; our own choice.</summary>
    private const int DocumentsOfASlice = 64;

    public const int Decide = 0;

    private static readonly int OfEachVisit = Enum.GetValues<PrintStage>().Length;

    /// <summary>The parts of all stages after the first.</summary>
    /// <param name="job">Number of the job.</param>
    /// <param name="visits">The jobs of each visit, in the order in which they are issued.</param>
    public static IReadOnlyList<JobPart> Parts(int job, IReadOnlyList<IReadOnlyList<DocumentJob>> visits) =>
        [
            .. from visit in visits.Index()
            from stage in Enum.GetValues<PrintStage>()
            let slices = Math.Max(1, (visit.Item.Count(j => Of(j) == stage) + DocumentsOfASlice - 1) / DocumentsOfASlice)
            from slice in Enumerable.Range(0, slices)
            select new JobPart(job, 1 + (visit.Index * OfEachVisit) + (int)stage, slice, slices),
            new JobPart(job, Last(visits.Count), 0, 1),
        ];

    /// <summary>The stage that ends a job.</summary>
    public static int Last(int visits) => 1 + (visits * OfEachVisit);

    /// <summary>Which visit a stage prints, in the order in which they are issued, and what of it.</summary>
    /// <param name="stage">After the first and before the last.</param>
    public static (int Visit, PrintStage Stage) Printed(int stage) => ((stage - 1) / OfEachVisit, (PrintStage)((stage - 1) % OfEachVisit));

    /// <summary>Whether a document belongs to a part of its visit.</summary>
    public static bool IsIn(DocumentJob document, JobPart part) =>
        Of(document) == Printed(part.Stage).Stage && SliceOf(document, part.Slices) == part.Slice;

    private static PrintStage Of(DocumentJob document) =>
        document.IsWarning ? PrintStage.Warnings
        : document.Type == DocumentTypes.DueLabel ? PrintStage.DueLabels
        : PrintStage.Documents;

    /// <summary>By a sum that is the same on every machine and in every version.</summary>
    private static int SliceOf(DocumentJob document, int slices)
    {
        var named = string.Join('\n', document.Items.Select(i => i.Item.Id ?? "").Prepend(document.Type.Kind));
        return (int)(BinaryPrimitives.ReadUInt32BigEndian(SHA256.HashData(Encoding.UTF8.GetBytes(named))) % (uint)slices);
    }
}
