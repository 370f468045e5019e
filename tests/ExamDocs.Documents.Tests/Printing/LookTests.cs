using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class LookTests(SharedBrowser browser)
{
    [Fact]
    public async Task Look()
    {
        var head = new Letterhead { Name = "Oakhollow Examinations", Telephone = "0000 555 0142" };
        var dir = Directory.CreateDirectory("/dev/shm/labels/look").FullName;
        foreach (var tag in new[] { "en", "de", "fr" })
        {
            await Language.Find(tag)!.InAsync(async () =>
            {
                foreach (var (name, id, serial, ends) in new[] { ("plain", "CON-01", "", false), ("ends", "CLR-03", "", true), ("long", "CON-01", "SN-2024-0004711-B", false), ("none", "CON-01", "-", false) })
                {
                    var (visit, item) = Example.With(id, i => serial.Length == 0 ? i : serial == "-" ? i with { Serial = null, OwnersMark = "BT 14" } : i with { Serial = serial });
                    var label = new DueLabelModel(Example.Identity(DocumentTypes.DueLabel) with { Letterhead = name == "none" ? null : head }, visit, item);
                    Console.WriteLine($"{tag} {name} due: {label.Code.Matrix?.Modules} x {label.Code.ModuleMm}: {label.Code.Text.Replace('\n', '|')} {string.Join(';', label.Misfits)}");
                    File.WriteAllBytes($"{dir}/{tag}-{name}-70x37.pdf", await browser.PrintAsync(await browser.Renderer.HtmlAsync(label)));
                    foreach (var face in DueFace.All)
                    {
                        var m = new DueFaceModel(label, face);
                        Console.WriteLine($"{tag} {name} {face.WidthMm}x{face.HeightMm}: {m.Code.Matrix?.Modules} x {m.Code.ModuleMm}: {m.Code.Text.Replace('\n', '|')} {string.Join(';', m.Misfits)}");
                        if (m.Misfits.Count == 0)
                            File.WriteAllBytes($"{dir}/{tag}-{name}-{face.WidthMm}x{face.HeightMm}.pdf", await browser.PrintAsync(await browser.Renderer.HtmlAsync(m)));
                    }
                }
                foreach (var id in new[] { "BRG-02", "PUL-02", "CON-07" })
                {
                    var q = new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel) with { Letterhead = head }, Example.Visit, Example.Item(id));
                    Console.WriteLine($"{tag} {id} {q.Code.Matrix?.Modules} x {q.Code.ModuleMm}: {q.Code.Text.Replace('\n', '|')}");
                    File.WriteAllBytes($"{dir}/{tag}-q-{id}.pdf", await browser.PrintAsync(await browser.Renderer.HtmlAsync(q)));
                }
                File.WriteAllBytes($"{dir}/{tag}-hand.pdf", await browser.PrintAsync(await browser.Renderer.HtmlAsync(new HandTagModel(tag == "de" ? null : head))));
                return 0;
            });
        }
    }
}
