using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Enclosures.Wording;

/// <inheritdoc />
internal sealed class French : EnclosuresPhrases
{
    public override string FileName => "Contenu";
    public override string Title => "Documents joints";
    public override string Lead => "Les documents d’une visite réunis dans ce dossier. Chacun est un fichier à part.";
    public override string PutTogetherOn => "Dossier constitué le";
    public override string To => "À";
    public override string From => "De l’auteur du rapport";
    public override string ExaminedAt => "Lieu et date de la vérification";
    public override string What => "Nature";
    public override string Items => "Équipements";
    public override string Pages => "Pages";
    public override string Sha256 => "SHA-256 commençant par";
    public override string NotReported => "Aucun rapport de ce dossier ne concerne\u00A0:";

    public override string HowToCheck =>
        "Pour vérifier un document, demander à l’émetteur, à un numéro de téléphone connu par ailleurs, l’empreinte SHA-256 "
        + "entière de son fichier. Les chiffres donnés ici aident seulement à distinguer les fichiers.";

    public override string NoDocument =>
        "Cette page est une liste. Elle n’a pas de numéro et ne remplace rien de ce que disent les documents.";

    public override string Count(int documents, int pages) =>
        $"{Printed.Count(documents)} {(documents == 1 ? "document" : "documents")}, "
        + $"{Printed.Count(pages)} {(pages == 1 ? "page" : "pages")}";
}
