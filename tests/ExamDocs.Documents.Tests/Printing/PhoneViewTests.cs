using ExamDocs.Core.Determination;
using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>
/// What a phone shows of the code on each label, printed at 203 dots to the inch in black and white, as zbarimg reads it.
/// </summary>
public sealed class PhoneViewTests(SharedBrowser browser)
{
    private static readonly Letterhead Head = new() { Name = "Oakhollow Examinations", Telephone = "0000 555 0142" };

    [Theory]
    [InlineData(
        "en",
        "BRG-02",
        "Q-2026-000001 BRG-02|DO NOT USE. Withdrawn 11 May 2026.|Serial WB-24-1103|Ring 0000 555 0142 (Oakhollow Examinations)"
    )]
    [InlineData(
        "en",
        "PUL-02",
        "Q-2026-000001 PUL-02|DO NOT USE. Not determined, 11 May 2026.|Serial WW-3072|Ring 0000 555 0142 (Oakhollow Examinations)"
    )]
    [InlineData(
        "de",
        "BRG-02",
        "Q-2026-000001 BRG-02|NICHT BENUTZEN. Ausgesondert, 11. Mai 2026.|S/N WB-24-1103|Tel. 0000 555 0142 (Oakhollow Examinations)"
    )]
    [InlineData(
        "fr",
        "PUL-02",
        "Q-2026-000001 PUL-02|NE PAS UTILISER. En attente de décision, 11 mai 2026.|S/N WW-3072|Tél. 0000 555 0142"
    )]
    public async Task A_label_that_forbids(string language, string id, string shown)
    {
        var model = In(language, () => new LabelModel(Identity(DocumentTypes.QuarantineLabel), Example.Visit, Example.Item(id)));
        Assert.Equal(Lines(shown), await SeenAsync(language, () => browser.Renderer.HtmlAsync(model)));
    }

    [Theory]
    [InlineData("en", "CON-01", "D-2026-000001 CON-01|Examine by 11 Nov 2026|Serial OT-44120|Ring 0000 555 0142 (Oakhollow Examinations)")]
    [InlineData(
        "de",
        "CON-01",
        "D-2026-000001 CON-01|Prüfen bis 11. November 2026|Seriennummer OT-44120|Tel. 0000 555 0142 (Oakhollow Examinations)"
    )]
    [InlineData(
        "fr",
        "CON-01",
        "D-2026-000001 CON-01|Vérifier d’ici le 11 novembre 2026|S/N OT-44120|Tél. 0000 555 0142 (Oakhollow Examinations)"
    )]
    public async Task The_next_examination(string language, string id, string shown)
    {
        var model = In(language, () => Due(id));
        Assert.Equal(Lines(shown), await SeenAsync(language, () => browser.Renderer.HtmlAsync(model)));
    }

    public static TheoryData<int, string, string> Faces =>
        new()
        {
            { 0, "en", "D-2026-000001 CLR-03" },
            { 0, "de", "D-2026-000001 CLR-03" },
            { 1, "en", $"{OnSmall}|Ring 0000 555 0142 (Oakhollow Examinations)" },
            { 2, "en", $"{OnSmall}|Ring 0000 555 0142 (Oakhollow Examinations)" },
            {
                2,
                "fr",
                "D-2026-000001 CLR-03|Utiliser jusqu’au 20 août 2026|Vérifier d’ici le 11 novembre 2026|S/N OS-0931|Tél. 0000 555 0142 (Oakhollow Examinations)"
            },
            { 3, "en", $"{OnSmall}|Ring 0000 555 0142 (Oakhollow Examinations)" },
            { 4, "en", $"{OnSmall}|Ring 0000 555 0142 (Oakhollow Examinations)" },
        };

    // CLR-03 is fit until 20 Aug 2026, and would be examined again by 11 Nov 2026.
    [Theory]
    [MemberData(nameof(Faces))]
    public async Task The_next_examination_in_every_other_size_down_to_the_smallest(int face, string language, string shown)
    {
        var model = In(language, () => new DueFaceModel(Due("CLR-03"), DueFace.All[face]));
        Assert.Equal(Lines(shown), await SeenAsync(language, () => browser.Renderer.HtmlAsync(model)));
    }

    private const string OnSmall = "D-2026-000001 CLR-03|Do not use after 20 Aug 2026|Examine by 11 Nov 2026|Serial OS-0931";

    private static DueLabelModel Due(string id) => new(Identity(DocumentTypes.DueLabel), Example.Visit, Example.Item(id));

    private static DocumentIdentity Identity(DocumentType type) => Example.Identity(type) with { Letterhead = Head };

    private static T In<T>(string language, Func<T> make) => Language.Find(language)!.In(make);

    private static string Lines(string shown) => shown.Replace('|', '\n');

    private async Task<string> SeenAsync(string language, Func<Task<string>> html) =>
        Tool.PhoneView(await browser.PrintAsync(await Language.Find(language)!.InAsync(html)));
}
