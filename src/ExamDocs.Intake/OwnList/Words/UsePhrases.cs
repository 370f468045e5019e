namespace ExamDocs.Intake.OwnList.Words;

/// <summary>What a list says of an item's use, from the best to the worst.</summary>
public enum UseMeaning
{
    /// <summary>It says nothing against the item, and decides nothing: pass, OK, in use.</summary>
    Remark,
    Stored,
    Lost,

    /// <summary>Out of use, for whatever reason: it comes in withdrawn, to be released.</summary>
    Withdrawn,
    Destroyed,
}

/// <summary>Words for it in English, German and French. Common practice, no source.</summary>
internal static class UsePhrases
{
    /// <summary>Words that make no sense against an item, though one of those against it stands among them.</summary>
    public static PhraseBook<UseMeaning> Harmless { get; } =
        new PhraseBook<UseMeaning>().Add(
            UseMeaning.Remark,
            Split(
                "no defect, no defects, no defects found, no damage, not damaged, undamaged, no faults, no fault, "
                    + "nothing wrong, keine mängel, "
                    + "ohne mängel, ohne mangel, kein mangel, kein defekt, keine defekte, mangelfrei, unbeschädigt, "
                    + "aucun défaut, sans défaut, "
                    + "pas de défaut, r a s, rien à signaler, non endommagé"
            )
        );

    /// <summary>What stands alone in a cell about the use of an item.</summary>
    public static PhraseBook<UseMeaning> Alone { get; } =
        new PhraseBook<UseMeaning>()
            .Add(
                UseMeaning.Remark,
                Split(
                    "pass, passed, ok, okay, o k, good, very good, satisfactory, serviceable, fit, fit for use, safe, fine, "
                        + "in use, in service, "
                        + "active, used, new, valid, current, as new, bestanden, i o, io, in ordnung, gut, sehr gut, "
                        + "einsatzbereit, in betrieb, "
                        + "in gebrauch, aktiv, geprüft, neu, gebraucht, conforme, bon, bon état, très bon, en service, "
                        + "en usage, valide, apte, "
                        + "actif, neuf, correct, n a, none, keine, aucun"
                )
            )
            .Add(
                UseMeaning.Stored,
                Split(
                    "stored, in store, in storage, spare, reserve, in stock, lager, eingelagert, auf lager, ersatz, "
                        + "en stock, réserve, stocké"
                )
            )
            .Add(
                UseMeaning.Lost,
                Split("lost, missing, stolen, verloren, vermisst, fehlt, gestohlen, perdu, perdue, manquant, volé, volée")
            )
            .Add(UseMeaning.Destroyed, Split(DestroyedWords + ", scrap, schrott, rebut, ferraille, bin"))
            .Add(UseMeaning.Withdrawn, Split(OutOfUse + ", " + AgainstIt));

    /// <summary>Words that say an item is out of use, wherever in a row they stand.</summary>
    public static PhraseBook<UseMeaning> Anywhere { get; } =
        new PhraseBook<UseMeaning>().Add(UseMeaning.Destroyed, Split(DestroyedWords)).Add(UseMeaning.Withdrawn, Split(OutOfUse));

    /// <summary>Words that speak against an item where its use is spoken of.</summary>
    public static PhraseBook<UseMeaning> InState { get; } =
        new PhraseBook<UseMeaning>()
            .Add(UseMeaning.Destroyed, Split(DestroyedWords))
            .Add(UseMeaning.Withdrawn, Split(OutOfUse + ", " + AgainstIt))
            .Add(UseMeaning.Lost, Split("lost, missing, stolen, verloren, vermisst, gestohlen, perdu, volé"));

    private const string DestroyedWords =
        "scrapped, destroyed, disposed, disposed of, thrown away, cut up, junked, binned, "
        + "verschrottet, vernichtet, entsorgt, zerstört, weggeworfen, zerschnitten, "
        + "détruit, détruite, mis au rebut, mise au rebut, rebuté, rebutée, jeté, jetée, ferraillé";

    private const string OutOfUse =
        "replaced by, superseded by, sold to, written off, recalled, time expired, life expired, no longer here, "
        + "ersetzt durch, verkauft an, "
        + "zurückgerufen, remplacé par, remplacée par, vendu à, rappelé par, withdrawn, withdraw, withdrawn from service, "
        + "retired, failed, out of service, out of use, not in use, do not use, quarantine, "
        + "quarantined, condemned, decommissioned, unserviceable, unfit, unsafe, defective, removed from service, taken out of service, "
        + "discarded, discard, scrap it, to be scrapped, not fit, not ok, not passed, did not pass, no longer used, no longer in use, "
        + "ausgesondert, ausgemustert, gesperrt, nicht bestanden, durchgefallen, ausser betrieb, ausgeschieden, stillgelegt, aussondern, "
        + "nicht benutzen, nicht verwenden, nicht in ordnung, nicht einsatzbereit, defekt, ablegereif, abgelegt, quarantäne, "
        + "hors service, hors d'usage, retiré, retirée, retiré du service, réformé, réformée, refusé, refusée, rejeté, rejetée, "
        + "non conforme, ne pas utiliser, défectueux, défectueuse, quarantaine, à réformer, inapte";

    private const string AgainstIt =
        "replaced, superseded, sold, given away, gone, recall, too old, ersetzt, verkauft, abgeschrieben, überaltert, "
        + "rückruf, remplacé, vendu, "
        + "rappel, fail, failure, reject, rejected, nok, n ok, no go, ko, oos, o o s, u s, us, hold, on hold, held, defect, "
        + "fault, faulty, damaged, "
        + "damage, broken, repair, for repair, to repair, in repair, expired, out of date, replace, to be replaced, removed, worn out, "
        + "condemn, nio, n i o, nicht ok, beschädigt, kaputt, mangelhaft, mangel, mängel, reparatur, in reparatur, abgelaufen, ersetzen, "
        + "austauschen, hs, h s, nc, cassé, cassée, endommagé, endommagée, périmé, périmée, à réparer, en réparation, réparation, "
        + "à remplacer, échec, défaut";

    private static IEnumerable<string> Split(string phrases) => phrases.Split(',', StringSplitOptions.TrimEntries);
}
