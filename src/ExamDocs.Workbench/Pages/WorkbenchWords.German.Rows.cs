using ExamDocs.UseCases.Recording;

namespace ExamDocs.Workbench.Pages;

/// <content>German, about what was done to an item.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string EntriesOf(string list) =>
            list switch
            {
                PeopleRows.List => "Weitere Personen",
                ItemRows.Tests => "Erprobungen",
                ItemRows.Renewals => "Erneuerte Teile",
                ItemRows.Remedies => "Instandsetzungen und Änderungen",
                ItemRows.Releases => "Freigaben nach einer Aussonderung",
                _ => "Verbleib nach der Aussonderung",
            };

        public override string EntriesHow(string list) =>
            list switch
            {
                PeopleRows.List => "Wer außer dem Prüfer ausgeführt oder beaufsichtigt hat, was hier aufgezeichnet wird: auf den Seiten "
                    + "der Gegenstände auszuwählen.",
                ItemRows.Tests => "Die Erprobungen bei dieser Prüfung und ihre Ergebnisse.",
                ItemRows.Renewals =>
                    "Teile, die von diesem Gegenstand abgenommen wurden, und was stattdessen angebracht wurde. Das angebrachte "
                        + "Teil ist ein Gegenstand dieses Auftrags, und seine eigene Seite sagt, dass es an diesem angebracht ist. Hat "
                        + "eine sachkundige Person die Arbeit selbst ausgeführt, wird sie auch als Aufsicht genannt.",
                ItemRows.Remedies => "Instandsetzungen dieses Gegenstands und Änderungen an ihm.",
                ItemRows.Releases =>
                    "Entscheidungen einer sachkundigen Person, dass eine frühere Aussonderung dieses Gegenstands beendet ist. Nennen "
                        + "Sie das Dokument, das ihn ausgesondert hat, oder den Tag. Steht nicht da, warum sie beendet ist, so gilt sie "
                        + "als behoben, wenn eine Erneuerung oder Instandsetzung des Gegenstands erfasst ist, sonst als erneut geprüft.",
                _ => "Was nach der Aussonderung aus diesem Gegenstand wurde.",
            };

        public override string AddEntry(string list) =>
            list switch
            {
                PeopleRows.List => "Person hinzufügen",
                ItemRows.Tests => "Erprobung hinzufügen",
                ItemRows.Renewals => "Erneuerung hinzufügen",
                ItemRows.Remedies => "Instandsetzung hinzufügen",
                ItemRows.Releases => "Freigabe hinzufügen",
                _ => "Verbleib hinzufügen",
            };

        public override string RowCalled(string list, int number) =>
            list switch
            {
                PeopleRows.List => Text($"Person {number}"),
                ItemRows.Tests => Text($"Erprobung {number}"),
                ItemRows.Renewals => Text($"Erneuerung {number}"),
                ItemRows.Remedies => Text($"Instandsetzung {number}"),
                ItemRows.Releases => Text($"Freigabe {number}"),
                _ => Text($"Verbleib {number}"),
            };

        public override string TakeRowOff(string row) => $"Wegnehmen: {row}";

        public override string RowMember(string list, string member) =>
            $"{list}/{member}" switch
            {
                "tests/description" => "Was erprobt wurde",
                "tests/result" => "Ergebnis der Erprobung",
                "renewals/removedPart" => "Abgenommenes Teil",
                "renewals/fittedPart" => "Angebrachtes Teil",
                "renewals/reason" => "Grund",
                "renewals/doneBy" or "remedies/doneBy" or "disposals/by" => "Ausgeführt von",
                "renewals/supervisedBy" => "Beaufsichtigt von",
                "renewals/doneOn" or "remedies/doneOn" or "disposals/on" => "Ausgeführt am",
                "renewals/retiedBy" => "Neu gebunden von (wo das so ist)",
                "remedies/what" => "Was gemacht wurde",
                "remedies/evidence" => "Beleg",
                "releases/document" => "Dokument, das ihn ausgesondert hat",
                "releases/withdrawnOn" => "Ausgesondert am",
                "releases/because" => "Warum sie beendet ist",
                "releases/by" => "Freigegeben von",
                "releases/on" => "Freigegeben am",
                "releases/grounds" => "Begründung",
                "disposals/action" => "Was daraus wurde",
                "people/name" => "Vor- und Nachname",
                "people/address" => "Anschrift",
                "people/qualifications" => "Qualifikation",
                "people/selfEmployed" => "Selbständig?",
                "people/employer/name" => "Arbeitgeber",
                "people/employer/address" => "Anschrift des Arbeitgebers",
                _ => member,
            };

        protected override IReadOnlyList<(string Value, string Label)>? ChoicesOfRow(string name) =>
            name switch
            {
                "releases/because" =>
                [
                    ("made-good", "behoben durch Erneuerung oder Instandsetzung"),
                    ("examined-again", "erneut geprüft"),
                    ("recorded-in-error", "irrtümlich erfasst"),
                ],
                "disposals/action" =>
                [
                    ("quarantined", "gesperrt"),
                    ("sent for repair", "zur Instandsetzung geschickt"),
                    ("destroyed", "vernichtet"),
                ],
                _ => null,
            };
    }
}
