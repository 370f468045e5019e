using System.Text;
using System.Xml;

namespace ExamDocs.Intake.Annotating;

/// <summary>Opens a part for writing so that line breaks within attributes and texts stay what they are.</summary>
internal static class PartWriter
{
    /// <param name="target">It is left open.</param>
    public static XmlWriter Open(Stream target) =>
        XmlWriter.Create(
            target,
            new XmlWriterSettings
            {
                Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
                NewLineHandling = NewLineHandling.Entitize,
                Indent = false,
                CloseOutput = false,
            }
        );
}
