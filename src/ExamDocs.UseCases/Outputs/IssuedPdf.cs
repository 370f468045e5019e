using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Outputs;

/// <summary>Tells whether a file is an issued document: by the register that knows its number, or by the data within it.</summary>
internal static class IssuedPdf
{
    public static bool Is(string file, string? register)
    {
        using var stream = File.OpenRead(file);
        if (!ReadInput.FirstBytes(stream).AsSpan().StartsWith("%PDF"u8))
            return false;
        return stream.Length > ReadDocument.MostBytes || HasOurData(stream) || IsKnown(Path.GetFileNameWithoutExtension(file), register);
    }

    private static bool HasOurData(FileStream stream)
    {
        var pdf = new byte[stream.Length];
        stream.ReadExactly(pdf);
        try
        {
            return AttachedFiles.Find(pdf, EmbeddedFiles.DocumentName, JsonRecordReader.MaxBytes) is not null;
        }
        catch (PdfSyntaxException)
        {
            // Not as we write it. One of ours that was damaged or altered names its data still.
            return pdf.AsSpan().IndexOf("examdocs.json"u8) >= 0;
        }
    }

    private static bool IsKnown(string name, string? register)
    {
        if (register is null || DocumentNumber.In(name) is not { Count: > 0 } numbers || !DocumentRegister.Exists(register))
            return false;
        using var opened = DocumentRegister.OpenToRead(register);
        return numbers.Any(n => opened.FindByNumber(n) is not null);
    }
}
