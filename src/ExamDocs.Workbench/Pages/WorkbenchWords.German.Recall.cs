using ExamDocs.Core.Recalls;

namespace ExamDocs.Workbench.Pages;

/// <content>German, for the pages that look up a maker's safety notice.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string Recall => "Rückruf";
        public override string RecallHow =>
            "Ein Hersteller hat geschrieben: nehmen Sie diese außer Gebrauch. Legen Sie die Mitteilung als Datei ab oder "
            + "tippen Sie sie ein. Jeder Gegenstand des Registers ist dann betroffen, nicht betroffen oder es ist nicht "
            + "feststellbar.";
        public override string DropNotice => "Mitteilung hier ablegen (.json)";
        public override string LookThrough => "Register durchsehen";
        public override string TypeNotice => "Mitteilung eintippen";
        public override string NoticeMaker => "Hersteller, wie die Mitteilung ihn nennt";
        public override string NoticeAlsoCalled => "Andere Namen des Herstellers, einer je Zeile";
        public override string NoticeReference => "Zeichen des Herstellers";
        public override string NoticeOn => "Tag der Mitteilung";
        public override string NoticeDemands => "Was der Hersteller verlangt";
        public override string NoticeReadAt => "Wo Sie es gelesen haben";
        public override string NoticeNames => "Was sie nennt";
        public override string NoticeNamesHow =>
            "Alles Eingetippte muss zutreffen; von Bereichen, Mustern und einzelnen Seriennummern genügt eines. Lassen "
            + "Sie leer, was der Hersteller nicht einschränkt. Für mehrere Arten von Ausrüstung legen Sie eine Datei ab.";
        public override string NoticeModels => "Modelle, eines je Zeile";
        public override string NoticePartNumbers => "Teilenummern, eine je Zeile";
        public override string NoticeSerials => "Einzelne Seriennummern, eine je Zeile";
        public override string NoticePatterns => "Muster von Seriennummern, eines je Zeile: * beliebig, ? ein Zeichen, # eine Ziffer";
        public override string NoticeBatches => "Chargennummern, eine je Zeile";
        public override string MadeFrom => "Hergestellt ab, einschließlich (2024-02)";
        public override string MadeTo => "Hergestellt bis, einschließlich";
        public override string CheckCharacters => "Zeichen am Ende, die die Nummer nur prüfen";
        public override string NoticesBefore => "Früher nachgesehen";
        public override string TakeOut => "Außer Gebrauch nehmen";
        public override string TakeOutNow => "Papiere ausstellen";
        public override string NothingToTakeOut => "Nichts mehr außer Gebrauch zu nehmen: was die Mitteilung nennt, ist es schon.";
        public override string NextTakeOut =>
            "Weiter: sehen Sie an, was betroffen ist, stellen Sie dann die Papiere aus und bringen Sie die Etiketten an.";
        public override string SweepRecord => "Protokoll der Rückrufaktion herunterladen";
        public override string AffectedHead => "Betroffen";
        public override string OpenHead => "Nicht feststellbar";
        public override string NotAffectedHead => "Nicht betroffen";
        public override string ShowThem => "Anzeigen";
        public override string Today => "Heute";
        public override string NoItemsOnRecord => "Das Register hat keinen Gegenstand.";

        public override string RangeFrom(int number) => Text($"Seriennummern {number}: von, einschließlich");

        public override string RangeTo(int number) => Text($"Seriennummern {number}: bis, einschließlich");

        public override string TakeOutHow(int withdraw, int hold) =>
            Text($"{withdraw} auszusondern, je mit Mitteilung und Sperretikett; {hold} zurückzuhalten, je mit Halteetikett. ")
            + "Es wird festgehalten, dass niemand sie angesehen hat und dass Sie sie herausnehmen, weil der Hersteller es verlangt.";

        public override string RecallIs(RecallVerdict verdict) =>
            verdict switch
            {
                RecallVerdict.Affected => "BETROFFEN: NICHT BENUTZEN",
                RecallVerdict.CannotTell => "NICHT FESTSTELLBAR: NICHT BENUTZEN, bis jemand nachgesehen hat",
                _ => "nicht betroffen",
            };
    }
}
