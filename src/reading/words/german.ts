import type { Language } from "./language";

export const german: Language = {
  name: "German",
  headings: {
    dwelling: {
      4: "wohnung, wohneinheit, we, whg, haus, haus nr, hausnummer, wohnungs nr, einheit, nutzungseinheit, ne, whg nr, wohnung nr, appartement, objekt, top",
      2: "adresse, anschrift, gebaude, lage, block, strasse, mieter",
    },
    fan: {
      4: "lufter, lufter nr, ventilator, ventilator nr, anlage, gerat, gerate nr, abluftventil, ventil nr, lufternr",
      2: "nr, pos, position, ventil, abluftgerat, bezeichnung",
    },
    room: {
      4: "raum, zimmer, raumname, raumbezeichnung, ablufttraum, abluftraum, raumart",
      3: "ort, einbauort, bereich",
    },
    duty: {
      4: "betrieb, betriebsart, betriebsweise, steuerung, laufzeit, schaltung, stufe, regelung, modus",
      2: "art",
    },
    box: {
      4: "kasten nr, kastennummer, messkasten, messbox, box nr",
      3: "kasten, box",
    },
    opening: {
      4: "blende, offnung, loch, blende nr, offnung nr, lochblende, einsatz, ring, platte, blendennr, scheibe",
      2: "kennung",
    },
    area: {
      4: "flache, querschnitt, offnungsflache, lochflache, freie flache, blendenflache, offnungsquerschnitt, lochquerschnitt, a",
      3: "offnung, loch, blende",
    },
    diameter: {
      4: "diameter, durchmesser, loch diameter, lochdurchmesser, dm, blendendurchmesser, lochdm, d",
      2: "loch",
    },
    pressure: {
      4: "druck, dp, kastendruck, druckdifferenz, differenzdruck, unterdruck, dp kasten gegen raum, p kasten, messdruck, dp kasten, druck im kasten, dp box, boxdruck, wirkdruck",
      3: "messwert, kasten, anzeige",
    },
    flow: {
      4: "volumenstrom, luftmenge, luftstrom, istwert, ist, abluftmenge, abluftvolumenstrom, gemessen, ist volumenstrom, abluft, v ist, ist menge, messergebnis, luftvolumenstrom",
      3: "menge, strom, ergebnis, v, q, messwert",
    },
    required: {
      4: "soll, sollwert, mindest, mindestwert, gefordert, vorgabe, minimum, erforderlich, soll volumenstrom, anforderung, planwert, v soll, mindestvolumenstrom, soll menge, min",
      2: "norm",
    },
    verdict: {
      4: "ergebnis, bewertung, bestanden, erfullt, status, i o, ok, beurteilung, urteil, in ordnung, einhaltung, befund, eingehalten, io, i o/n i o",
      2: "prufung",
    },
    tester: {
      4: "prufer, monteur, techniker, gemessen von, bearbeiter, name, kurzel, kz, gepruft von, durch, messtechniker, von, messer",
      2: "wer",
    },
    date: { 4: "datum, prufdatum, messdatum, tag, gepruft am, gemessen am, am, pruftag, messtag" },
    rated: {
      4: "nennwert, nennvolumenstrom, nennleistung, typenschild, nenn, herstellerangabe, nennluftmenge",
    },
    constant: { 4: "konstante, faktor, kastenfaktor, beiwert, k, kastenkonstante" },
    note: { 4: "bemerkung, notiz, hinweis, kommentar, anmerkung, massnahme" },
    other: {
      6: "wohnflache, grundflache, bodenflache, raumflache, nutzflache, raumvolumen, hausdruck, typ, lufter typ, fabrikat, seriennummer, preis, kosten, telefon, temperatur, aussendruck, luftdruck, geratetyp, gerate typ, kanaldurchmesser, kanal diameter, hersteller, rohr diameter, rohrdurchmesser, messgerat, messgerat nr, einzelpreis, stuckpreis, email, e mail, hausdruck gegen aussen, modell, stockwerk, windstarke, gegendruck",
      5: "abweichung, differenz, prozent, leistung, filter, geschoss, etage, etg, zeit, uhrzeit, anzahl, flur, baujahr, eigentumer, schall, stock, lfd nr, lfd, summe, kanal, bewohner, personen, wohnungstyp, wurzel",
    },
  },
  rooms: {
    bathroom:
      "bad, dusche, badezimmer, duschbad, elternbad, kinderbad, hauptbad, vollbad, nasszelle, gastebad",
    "half bath": "wc, gaste wc, toilette, g wc, klo, gastewc",
    kitchen: "kuche, kochnische, kochen, teekuche, wohnkuche",
    "kitchen hood": "dunstabzug, dunsthaube, abzugshaube",
    laundry: "hwr, hauswirtschaft, hauswirtschaftsraum, waschkuche, waschraum, trockenraum",
    other:
      "abstellraum, keller, flur, diele, schlafzimmer, sauna, abst, ankleide, vorrat, speisekammer, hobbyraum, garage, ar",
  },
  duties: {
    continuous:
      "dauer, dauernd, dauerbetrieb, standig, grundlast, durchlaufend, dauerlauf, immer, nennluftung, grundluftung, dauerhaft",
    "on demand":
      "schalter, bedarf, bei bedarf, feuchte, nachlauf, lichtschalter, taster, zeitschalter, bedarfsbetrieb, bewegung, schaltuhr, intervall, zeituhr, hygrostat, bedarfsgefuhrt, feuchtesensor",
  },
  verdicts: {
    pass: "i o, io, in ordnung, ok, ja, j, bestanden, erfullt, gut, eingehalten",
    fail: "n i o, nio, nicht in ordnung, nein, nicht bestanden, nicht erfullt, zu wenig, mangel, zu gering, nicht eingehalten, nachmessen, nachbessern",
    neither: "nicht gemessen, entfallt, offen, kein zugang, nicht gepruft, verschlossen",
  },
  dwellings: "we, wohnung, haus, whg, wohneinheit, top, ne",
  totals: "summe, gesamt, mittel, mittelwert, durchschnitt, zwischensumme, schnitt, insgesamt",
  otherTests:
    "blower door, luftdichtheit, luftdichtheitsmessung, leckage, kanalleckage, zuluft, zuluftmessung, n50, kanaldichtheit, budget, haushaltsplan, kostenplan",
  fanTests: "abluft, abluftmessung, lufter, ventilator, luftungsmessung, abluftventilatoren",
  retest: "nachmessung, wiederholung, zweite messung, nachtest",
  labels: {
    constant: "konstante, faktor, kastenfaktor, kastenkonstante, beiwert",
    start: "beginn, messbeginn, baubeginn, start, projektstart, auftragsbeginn",
    lowest: "kleinster druck, mindestdruck, min druck, druck ab, druck min",
    highest: "grosster druck, hochstdruck, max druck, druck bis, druck max",
  },
  sign: {
    box: "kasten, box, haube",
    room: "raum, zimmer, umgebung",
    against: "gegen, minus, gegenuber, relativ, zu, zum",
    negative: "unterdruck negativ, negativ bei abluft",
  },
};
