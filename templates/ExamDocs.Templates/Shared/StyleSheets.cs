using System.Globalization;
using System.Reflection;
using ExamDocs.Templates.Shared.Wording;
using Microsoft.AspNetCore.Components;
using NodaTime;

namespace ExamDocs.Templates.Shared;

/// <summary>The style sheets built in, and the page margins, which hold the document number and page count.</summary>
internal static class StyleSheets
{
    private const string Small = "font: 7.5pt \"Noto Sans\";";
    private const string SmallBold = "font: bold 7.5pt \"Noto Sans\";";
    private const string Grey = "color: #4d545c;";
    private const string Black = "color: #14181d;";
    private const string Wide = "width: 32mm;";
    private const string Lines = "white-space: pre-line; line-height: 1.35;";
    private const string AboveTheText = "vertical-align: bottom; padding-bottom: 3.5mm;";
    private const string BelowTheForm = "vertical-align: top; padding-top: 1.6mm;";
    private const string BelowTheText = "vertical-align: top; padding-top: 3.6mm;";

    /// <summary>The base sheet, the page margins and the document's own sheets, in that order.</summary>
    public static MarkupString Paper(DocumentIdentity identity, string title, params string[] own) =>
        Sheets(Margins(identity.Number, identity.IssuedOn, identity.Letterhead, title), own);

    /// <summary>The same for a list beside documents, which has no number.</summary>
    /// <param name="title">In the margin of every page but the first.</param>
    /// <param name="on">The day of the list.</param>
    /// <param name="letterhead">Null for none.</param>
    /// <param name="own">Its own sheets.</param>
    public static MarkupString Unnumbered(string title, LocalDate on, Letterhead? letterhead, params string[] own) =>
        Sheets(Margins("", on, letterhead, title), own);

    private static MarkupString Sheets(string margins, string[] own) =>
        new($"<style>{Read("print")}{margins}{string.Concat(own.Select(Read))}</style>");

    /// <summary>The same for a form to write on, which has no number, and narrow margins.</summary>
    public static MarkupString Form(string title, Letterhead? letterhead, params string[] own) =>
        new($"<style>{Read("print")}{FormMargins(title, letterhead)}{string.Concat(own.Select(Read))}</style>");

    /// <summary>One sheet alone, for labels, which have no margins to print in.</summary>
    public static MarkupString Alone(string own) => new($"<style>{Read(own)}</style>");

    /// <summary>One sheet alone on a page of this size, millimetres.</summary>
    public static MarkupString Alone(string own, double widthMm, double heightMm) =>
        new(FormattableString.Invariant($"<style>@page {{ size: {widthMm:0.##}mm {heightMm:0.##}mm; margin: 0; }}{Read(own)}</style>"));

    private static string Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"css/{name}.css")
            ?? throw new InvalidOperationException($"there is no style sheet {name}.css");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    // What comes in here is the number (its form is checked), the date, our own titles and the letterhead's footer, escaped. A text of a
    // record never does.
    private static string Margins(string number, LocalDate on, Letterhead? letterhead, string title)
    {
        var issued = $"{Phrases.Common.Issued} {Printed.Day(on)}{Footer(letterhead)}";
        return $$"""
            @page { size: A4; margin: 17mm 15mm 17mm 15mm;
              @top-left { content: "{{title}}"; {{Small}} {{Grey}} {{AboveTheText}} }
              @top-right { content: "{{number}}"; {{SmallBold}} {{Black}} {{AboveTheText}} }
              @bottom-left { content: "{{number}}"; {{Wide}} {{SmallBold}} {{Black}} {{BelowTheText}} }
              @bottom-center { content: "{{issued}}"; {{Lines}} {{Small}} {{Grey}} {{BelowTheText}} }
              @bottom-right { content: {{Pages}}; {{Wide}} {{Small}} {{Black}} {{BelowTheText}} text-align: right; }
            }
            @page:first { margin-top: 13mm; @top-left { content: none; } @top-right { content: none; } }
            """;
    }

    private static string FormMargins(string title, Letterhead? letterhead) =>
        $$"""
            @page { size: A4; margin: 9mm 12mm 13mm 12mm;
              @bottom-left { content: "{{title}}{{Footer(letterhead)}}"; {{Lines}} {{Small}} {{Grey}} {{BelowTheForm}} }
              @bottom-right { content: {{Pages}}; {{Wide}} {{Small}} {{Black}} {{BelowTheForm}} text-align: right; }
            }
            """;

    private static string Pages => $"\"{Phrases.Common.Page} \" counter(page) \" {Phrases.Common.Of} \" counter(pages)";

    private static string Footer(Letterhead? letterhead) => letterhead?.Footer is { } footer ? $@"\a {Escaped(footer)}" : "";

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
