using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Yard.Wording;

namespace ExamDocs.Intake.Yard;

/// <summary>
/// Writes the form for the yard: one HTML file in which a visit is recorded offline, on a phone, and which saves it as examdocs/1. The
/// page runs one script, allowed by its hash, and loads nothing.
/// </summary>
public static class YardForm
{
    /// <param name="categories">What can be added in the yard; the categories of the record's items come along.</param>
    /// <param name="record">What to fill in: identities, limits, people and, as history, what was found before; null for nothing.</param>
    /// <param name="rules">The categories and regimes there are.</param>
    /// <param name="phrases">In which language; left out, English.</param>
    /// <returns>UTF-8. Equal input gives equal bytes.</returns>
    public static byte[] Write(
        IReadOnlyList<Category> categories,
        ExaminationRecord? record,
        KnownRules? rules = null,
        YardPhrases? phrases = null
    )
    {
        ArgumentNullException.ThrowIfNull(categories);
        phrases ??= YardPhrases.English;
        var data = YardData.Of(categories, record, rules ?? KnownRules.BuiltIn, phrases);
        return Encoding.UTF8.GetBytes(Page(data, phrases));
    }

    /// <summary>The page's script: its parts in their order, one after the other.</summary>
    internal static string Script { get; } = "\"use strict\";\n" + string.Concat(ScriptParts().Select(Text));

    private static string Style { get; } = Text("yard/yard.css");

    private static string Page(string data, YardPhrases phrases) =>
        $"""
            <!DOCTYPE html>
            <html lang="{phrases.Language}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="referrer" content="no-referrer">
            <title>{Html(phrases.Title)}</title>
            <style>{Style}</style>
            </head>
            <body>
            <header>
            <p id="banner" role="status"></p>
            <nav id="tabs" aria-label="{Html(phrases.Tabs)}"></nav>
            </header>
            <aside><p id="stay"></p></aside>
            <main id="main">
            <p>{Html(phrases.Opening)}</p>
            <noscript><p class="warning">{Html(phrases.NoScript)}</p></noscript>
            </main>
            <footer><p>{Html(phrases.Caution)}</p></footer>
            <script type="application/json" id="data">{data}</script>
            <script>{Script}</script>
            </body>
            </html>

            """;

    /// <summary>Everything is forbidden but this style and this script.</summary>
    private static string Policy =>
        $"default-src 'none'; script-src '{Hash(Script)}'; style-src '{Hash(Style)}'; base-uri 'none'; form-action 'none'";

    private static string Hash(string inline) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(inline)));

    private static string Html(string text) => HtmlEncoder.Default.Encode(text);

    /// <summary>Parts are named by their place: yard/1-elements.js.</summary>
    private static IEnumerable<string> ScriptParts() =>
        Assembly
            .GetExecutingAssembly()
            .GetManifestResourceNames()
            .Where(n => n.StartsWith("yard/", StringComparison.Ordinal) && n.EndsWith(".js", StringComparison.Ordinal))
            .OrderBy(n =>
                int.Parse(n["yard/".Length..n.IndexOf('-', StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture)
            );

    private static string Text(string name)
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"there is no {name}");
        using var reader = new StreamReader(file, Encoding.UTF8);
        // The browser hashes a page's script with its line ends as line feeds.
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
