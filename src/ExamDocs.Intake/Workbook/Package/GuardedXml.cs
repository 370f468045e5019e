using System.Xml;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Opens a part of a workbook for reading: no DTD, nothing from outside, names and texts bounded.</summary>
internal static class GuardedXml
{
    /// <param name="part">The part as its package opens it, guarded; it is closed with the reader.</param>
    /// <param name="keepAll">Comments and processing instructions too, for a faithful copy.</param>
    public static XmlReader Open(Stream part, bool keepAll) =>
        XmlReader.Create(
            part,
            new XmlReaderSettings
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                NameTable = new BoundedNameTable(),
                IgnoreComments = !keepAll,
                IgnoreProcessingInstructions = !keepAll,
                IgnoreWhitespace = false,
                MaxCharactersInDocument = WorkbookLimits.PartBytes,
                CloseInput = true,
            }
        );

    /// <summary>Steps to the next node.</summary>
    /// <returns>False at the end of the part.</returns>
    /// <exception cref="UnreadableWorkbookException">It lies deeper than any workbook's parts do.</exception>
    public static bool Step(this XmlReader xml)
    {
        if (!xml.Read())
            return false;
        return xml.NodeType is not XmlNodeType.Element || xml.Depth <= WorkbookLimits.Depth
            ? true
            : throw new UnreadableWorkbookException("The workbook's parts are nested deeper than any workbook's are.");
    }
}
