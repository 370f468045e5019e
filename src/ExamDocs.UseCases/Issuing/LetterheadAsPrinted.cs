using ExamDocs.Templates;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// The letterhead in <c>document.json</c>. The logo says nothing in words; that there is one, and its size, is enough to compose the
/// pages.
/// </summary>
internal sealed record LetterheadAsPrinted(
    string Name,
    string? Address,
    string? Contact,
    string Colour,
    string? Footer,
    LetterheadAsPrinted.LogoSize? Logo,
    string? Telephone = null
)
{
    public static LetterheadAsPrinted? Of(Letterhead? head) =>
        head is null
            ? null
            : new(
                head.Name,
                head.Address,
                head.Contact,
                head.Colour,
                head.Footer,
                head.Logo is { } logo ? new LogoSize(logo.WidthPx, logo.HeightPx) : null,
                head.Telephone
            );

    public Letterhead Read() =>
        new()
        {
            Name = Name,
            Address = Address,
            Contact = Contact,
            Telephone = Telephone,
            Colour = Colour,
            Footer = Footer,
            Logo = Logo is null ? null : new PhotoPrint(default, Logo.WidthPx, Logo.HeightPx),
        };

    internal sealed record LogoSize(int WidthPx, int HeightPx);
}
