using System.Globalization;
using System.Reflection;
using ExamDocs.Templates.Shared.Wording;
using Microsoft.AspNetCore.Components;

namespace ExamDocs.Templates.Shared;

/// <summary>The style sheets built in, and the page margins, which hold the document number and page count.</summary>
internal static class StyleSheets
{
    /// <summary>The base sheet, the page margins and the document's own sheets, in that order.</summary>
    public static MarkupString Paper(DocumentIdentity identity, string title, params string[] own) =>
        new($"<style>{Read("print")}{Margins(identity, title)}{string.Concat(own.Select(Read))}</style>");

    /// <summary>One sheet alone, for labels, which have no margins to print in.</summary>
    public static MarkupString Alone(string own) => new($"<style>{Read(own)}</style>");

    private static string Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"css/{name}.css")
            ?? throw new InvalidOperationException($"there is no style sheet {name}.css");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    // Only the number (whose form is checked), the date, our own titles and the letterhead's footer, escaped, come in here: never text of a
    // record.
    private static string Margins(DocumentIdentity identity, string title) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            @page { size: A4; margin: 17mm 15mm 17mm 15mm;
              @top-left { content: "{{title}}"; font: 7.5pt "Noto Sans"; color: #4d545c; vertical-align: bottom; padding-bottom: 3.5mm; }
              @top-right { content: "{{identity.Number}}"; font: bold 7.5pt "Noto Sans"; color: #14181d; vertical-align: bottom; padding-bottom: 3.5mm; }
              @bottom-left { content: "{{identity.Number}}"; width: 32mm; font: bold 7.5pt "Noto Sans"; color: #14181d; vertical-align: top; padding-top: 3.6mm; }
              @bottom-center { content: "{{Phrases.Common.Issued}} {{Printed.Day(identity.IssuedOn)}}{{Footer(
                identity
            )}}"; white-space: pre-line; line-height: 1.35; font: 7.5pt "Noto Sans"; color: #4d545c; vertical-align: top; padding-top: 3.6mm; }
              @bottom-right { content: "{{Phrases.Common.Page}} " counter(page) " {{Phrases.Common.Of}} " counter(pages); width: 32mm; font: 7.5pt "Noto Sans"; color: #14181d; vertical-align: top; padding-top: 3.6mm; text-align: right; }
            }
            @page:first { margin-top: 13mm; @top-left { content: none; } @top-right { content: none; } }
            """
        );

    private static string Footer(DocumentIdentity identity) => identity.Letterhead?.Footer is { } footer ? $@"\a {Escaped(footer)}" : "";

    /// <summary>
    /// Text within a CSS string: whatever is no plain letter or digit is written by its code point (CSS Syntax 3, section 4.3.7).
    /// </summary>
    private static string Escaped(string text) =>
        string.Concat(
            text.EnumerateRunes()
                .Select(r =>
                    r.IsAscii && char.IsAsciiLetterOrDigit((char)r.Value)
                        ? r.ToString()
                        : string.Create(CultureInfo.InvariantCulture, $@"\{r.Value:x} ")
                )
        );
}
