namespace ExamDocs.Intake.OwnList.Words;

/// <summary>Headings of lists in English, German and French. Common practice, no source.</summary>
internal static class HeadingVocabulary
{
    /// <summary>Headings that mean one thing.</summary>
    public static readonly (ListField Field, string Phrases)[] Certain =
    [
        (
            ListField.Id,
            "id, asset, item id, id no, id number, kit id, kit no, kit number, gear id, equipment id, asset id, asset no, "
                + "asset number, asset tag, "
                + "identifier, item no, item number, tag no, inventory no, inventory number, inventarnummer, inventar nr, inv nr, "
                + "geräte nr, gerätenummer, ident nr, identnummer, kennung, numéro d'inventaire, n° d'inventaire, "
                + "no d'inventaire, n° inventaire, numéro inventaire, identifiant, n° d'équipement, "
                + "repère, n° interne, interne nr"
        ),
        (
            ListField.Category,
            "category, kind, type, item type, type of item, type of equipment, equipment type, kind of item, group, class, kategorie, art, "
                + "geräteart, gruppe, produktart, catégorie, type d'équipement, genre, famille, nature"
        ),
        (
            ListField.Description,
            "description, item, item description, article, product, name, item name, equipment, kit, gear, beschreibung, "
                + "bezeichnung, artikel, "
                + "gegenstand, produkt, gerät, désignation, dénomination, équipement, matériel, article, libellé"
        ),
        (ListField.Maker, "maker, manufacturer, make, brand, made by, hersteller, marke, fabrikat, fabricant, marque, constructeur"),
        (ListField.Model, "model, model name, modell, typ, typenbezeichnung, modèle, référence modèle"),
        (
            ListField.MakerAndModel,
            "make model, make and model, maker model, maker and model, manufacturer model, manufacturer and model, brand model, "
                + "hersteller modell, hersteller typ, hersteller und modell, marke modell, marque modèle, fabricant modèle, "
                + "marque et modèle"
        ),
        (
            ListField.PartNumber,
            "part number, part no, p n, article number, article no, order number, product code, artikelnummer, artikel nr, bestellnummer, "
                + "référence, référence fabricant, code article, code produit"
        ),
        (
            ListField.Serial,
            "serial, serial number, serial no, s n, sn, ser no, serial nr, batch number, batch no, seriennummer, serien nr, seriennr, "
                + "fabriknummer, chargennummer, numéro de série, n° de série, no de série, n° série, num série, numéro de lot, n° de lot"
        ),
        (
            ListField.OwnersMark,
            "owner's mark, owners mark, own mark, marking, colour code, color code, our mark, eigenmarkierung, eigene kennzeichnung, "
                + "kennzeichnung, farbcode, marquage, marquage propriétaire, marque du propriétaire, code couleur"
        ),
        (
            ListField.Manufactured,
            "manufactured, date of manufacture, manufacture date, manufacturing date, year of manufacture, production date, dom, made, "
                + "made in year, year made, date made, baujahr, herstelldatum, herstellungsdatum, herstellungsjahr, hergestellt, "
                + "produktionsdatum, date de fabrication, fabriqué, fabriqué le, année de fabrication, fabrication"
        ),
        (
            ListField.Purchased,
            "purchased, date of purchase, purchase date, bought, date bought, kaufdatum, gekauft, gekauft am, anschaffung, "
                + "anschaffungsdatum, date d'achat, acheté, acheté le, achat"
        ),
        (
            ListField.FirstUsed,
            "first used, first use, date of first use, date first used, in use since, in service since, in service date, put into service, "
                + "into service, put in service, erste benutzung, erstbenutzung, erstgebrauch, erstverwendung, in gebrauch seit, "
                + "in betrieb seit, inbetriebnahme, première utilisation, date de première utilisation, mise en service, "
                + "date de mise en service, en service depuis"
        ),
        (
            ListField.SafeWorkingLoad,
            "swl, wll, safe working load, working load limit, wll kg, swl kg, tragfähigkeit, nutzlast, cmu, charge maximale d'utilisation"
        ),
        (
            ListField.MarkedStrength,
            "mbs, mbl, marked strength, breaking strength, breaking load, minimum breaking strength, strength, bruchlast, bruchkraft, "
                + "mindestbruchkraft, charge de rupture, résistance, force de rupture"
        ),
        (ListField.Standards, "standard, standards, norm, normen, norme, normes, en standard"),
        (
            ListField.LastExamined,
            "last examined, last examination, date of last examination, last thorough examination, last inspection, "
                + "date of last inspection, "
                + "last inspected, last loler, loler date, last loler inspection, last loler examination, "
                + "last inspection date, last examination date, last insp, last insp date, insp date, last exam, last check, last checked, "
                + " inspected, inspected on, inspection date, date inspected, examined on, "
                + "letzte prüfung, letzte überprüfung, letzte inspektion, geprüft am, prüfdatum, datum der letzten prüfung, "
                + "dernier contrôle, dernière vérification, dernière inspection, date de contrôle, date du dernier contrôle, contrôlé le, "
                + "vérifié le, date de vérification"
        ),
        (
            ListField.ObsoleteOn,
            "obsolete on, end of life, expiry, expiry date, expires, expires on, use by, retire by, discard by, "
                + "end of service, lifespan ends, "
                + "ablaufdatum, ablegen bis, verwendbar bis, ablegereife, haltbar bis, fin de vie, date de péremption, péremption, "
                + "à réformer avant, date limite d'utilisation"
        ),
        (
            ListField.FittedTo,
            "fitted to, fitted on, attached to, part of, belongs to, mounted on, parent, montiert an, gehört zu, teil von, befestigt an, "
                + "monté sur, fixé sur, fait partie de, appartient à"
        ),
        (
            ListField.State,
            "status, result, state, outcome, pass fail, pass or fail, last result, inspection result, verdict, ergebnis, prüfergebnis, "
                + "resultat, resultat der prüfung, befund, zustand, condition, statut, état, résultat, résultat du contrôle, "
                + "avis, conclusion"
        ),
        (
            ListField.OutOfUse,
            "withdrawn, withdrawn on, date withdrawn, date of withdrawal, withdrawal date, retired, retired on, "
                + "date retired, retirement date, "
                + "scrapped, scrapped on, date scrapped, disposed, disposed on, disposal date, date of disposal, destroyed, destroyed on, "
                + "out of service, out of use, out of service date, quarantined, quarantined on, failed, fail, failed on, "
                + "defect, defective, "
                + "removed from service, ausgesondert, ausgesondert am, aussonderung, ausgemustert, ausgemustert am, verschrottet, "
                + "verschrottet am, entsorgt, entsorgt am, gesperrt, gesperrt am, ausser betrieb, vernichtet, défaut, "
                + "retiré, retiré le, date de retrait, mis au rebut, mis au rebut le, mise au rebut, date de mise au rebut, hors service, "
                + "réformé, réformé le, date de réforme, détruit, détruit le"
        ),
        (
            ListField.InUse,
            "in use, in service, active, serviceable, pass, passed, fit for use, in gebrauch, in betrieb, aktiv, einsatzbereit, bestanden, "
                + "en service, en usage, actif, conforme, apte"
        ),
        (
            ListField.Remark,
            "remark, remarks, note, notes, comment, comments, location, place, site, van, vehicle, store, user, owner, assigned to, "
                + "issued to, team, climber, colour, color, size, length, diameter, price, cost, supplier, invoice, quantity, qty, no, nr, "
                + "row, next insp, next exam, next inspection, next examination, next inspection date, "
                + "next examination date, next due, next check, due, due date, "
                + "inspection due, interval, inspected by, examined by, checked by, inspector, examiner, bemerkung, "
                + "bemerkungen, anmerkung, "
                + "hinweis, notiz, standort, ort, lagerort, fahrzeug, benutzer, besitzer, eigentümer, farbe, grösse, länge, durchmesser, "
                + "preis, lieferant, menge, anzahl, stück, lfd nr, laufende nummer, nächste prüfung, prüfung fällig, "
                + "prüfintervall, fällig, prüfer, geprüft von, "
                + "remarque, remarques, observation, observations, commentaire, commentaires, emplacement, lieu, site, véhicule, "
                + "utilisateur, propriétaire, affecté à, couleur, taille, longueur, diamètre, prix, fournisseur, facture, quantité, qté, "
                + "prochain contrôle, prochaine vérification, échéance, date du prochain contrôle, contrôlé par, vérificateur, contrôleur"
        ),
    ];

    /// <summary>Headings that lists use for more than one thing.</summary>
    public static readonly (ListField Field, string Phrases)[] Likely =
    [
        (ListField.Id, "number, nummer, numéro, n°, ref, reference, code, tag, label, kit ref, our ref, our number, no of item"),
        (
            ListField.SafeWorkingLoad,
            "load, max load, maximum load, rated load, rating, capacity, load rating, traglast, belastbarkeit, charge, charge max, capacité"
        ),
        (ListField.Standards, "en, conformity, konformität, conformité"),
        (ListField.Manufactured, "year, age, jahr, année"),
        (
            ListField.LastExamined,
            "inspection, examination, thorough examination, examined, tested, test date, date tested, checked, prüfung, "
                + "contrôle, vérification"
        ),
        (ListField.State, "test, check, grade, ok"),
        (ListField.FittedTo, "harness, on harness, assembly, set, an gurt, gurt, harnais, sur harnais, ensemble"),
    ];
}
