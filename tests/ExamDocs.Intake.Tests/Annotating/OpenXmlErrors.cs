using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>What a validator of the format, which is not ours, has to say of a workbook.</summary>
internal static class OpenXmlErrors
{
    public static List<string> Of(byte[] workbook)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(workbook), isEditable: false);
        return
        [
            .. new OpenXmlValidator { MaxNumberOfErrors = 10_000 }
                .Validate(document)
                .Select(e => $"{e.Part?.Uri} {e.Id} {e.Description} {e.Node?.LocalName}")
                .Distinct(StringComparer.Ordinal),
        ];
    }
}
