import type { Language } from "./language";

export const dutch: Language = {
  name: "Dutch",
  headings: {
    dwelling: {
      4: "woning, appartement, app, huis, woningnr, woning nr, bouwnummer, bnr, kavel, huisnummer, huisnr, won, woonunit, flat",
      2: "adres, gebouw, blok, object, complex",
    },
    fan: {
      4: "ventilator, ventilator nr, afzuiger, afzuiging, ventilatornr, toestel, afzuigpunt nr",
      2: "nr, ventiel, unit, code, afzuigpunt",
    },
    room: { 4: "ruimte, kamer, vertrek, ruimtenaam, verblijf", 3: "plaats, locatie, plek" },
    duty: {
      4: "bediening, bedrijf, werking, stand, regeling, schakeling, sturing, aansturing, bedrijfswijze, modus",
      2: "soort, gebruik",
    },
    box: {
      4: "kast nr, kastnr, meetkast, doos nr, meetdoos",
      3: "kast, doos",
    },
    opening: {
      4: "opening, gat, plaat, ring, blende, plaatnr, opening nr, schijf, schuif, gatnr, inzet",
      2: "maat",
    },
    area: {
      4: "oppervlak, oppervlakte, doorlaat, vrije doorlaat, opening oppervlak, gat oppervlak, gatoppervlak, doorlaatoppervlak",
      3: "opening, gat",
    },
    diameter: { 4: "diameter, gatdiameter, diam, doorsnede, doorsnee, middellijn, d", 2: "gat" },
    pressure: {
      4: "druk, drukverschil, kastdruk, onderdruk, dp, druk in kast, boxdruk, drukverschil kast, druk kast, doosdruk, bakdruk, druk in de kast, drukmeting",
      3: "aflezing, meting, meetwaarde, kast",
    },
    flow: {
      4: "debiet, luchtdebiet, volumestroom, gemeten, luchthoeveelheid, afzuigdebiet, gemeten debiet, luchtvolume, afvoer, gemeten waarde, hoeveelheid",
      3: "meting, resultaat, q, stroom",
    },
    required: {
      4: "eis, vereist, vereist debiet, minimum, minimaal, benodigd, ontwerp, gevraagd, min, norm, bouwbesluit, nodig, moet zijn, ontwerpdebiet, minimale waarde, bouwbesluit eis",
      2: "doel",
    },
    verdict: {
      4: "oordeel, resultaat, voldoet, akkoord, status, ok, beoordeling, voldoet ja/nee, goed/fout, goed, uitslag, conclusie, j/n",
      2: "controle",
    },
    tester: {
      4: "meter, monteur, door, gemeten door, controleur, technicus, initialen, naam, inspecteur, uitgevoerd door, opnemer, meting door, paraaf",
      2: "wie",
    },
    date: { 4: "datum, dag, meetdatum, gemeten op, op, datum meting, testdatum, d d" },
    rated: {
      4: "nominaal, nominaal debiet, typeplaatje, capaciteit, opgave fabrikant, fabrieksopgave",
    },
    constant: { 4: "constante, factor, coefficient, k, kastfactor, kastconstante" },
    note: { 4: "opmerking, notitie, bijzonderheid, actie, toelichting, opm" },
    other: {
      6: "vloeroppervlak, woonoppervlak, gebruiksoppervlak, vloeroppervlakte, huisdruk, woningdruk, type, typ, model, merk, prijs, kosten, telefoon, temperatuur, serienummer, kanaaldiameter, email, e mail, woningtype, type ventilator, buitendruk, luchtdruk, kostprijs, stuksprijs, eenheidsprijs, vloer, ruimteoppervlak, kanaaldruk, meter nr, instrument, gbo, wind, fabrikaat, buisdiameter",
      5: "afwijking, verschil, procent, vermogen, verdieping, tijd, kanaal, geluid, aantal, percentage, bouwjaar, bewoners, slaapkamers, totaal, etage, som, wortel, volgnr",
    },
  },
  rooms: {
    bathroom: "badkamer, douche, bad, badruimte, natte cel, badk",
    "half bath": "toilet, wc",
    kitchen: "keuken, keukenblok, kitchenette, open keuken, keuk",
    "kitchen hood": "afzuigkap, wasemkap",
    laundry: "wasruimte, bijkeuken, wasmachine, washok, waskamer, opstelplaats wasmachine",
    other:
      "berging, kelder, garage, gang, slaapkamer, zolder, hal, woonkamer, technische ruimte, inloopkast",
  },
  duties: {
    continuous:
      "continu, doorlopend, altijd, permanent, constant, altijd aan, basis, dag en nacht, cont",
    "on demand":
      "schakelaar, timer, vocht, sensor, intermitterend, op vraag, vraag, hygrostaat, tijdklok, handmatig, aanwezigheid, op verzoek, met licht, vochtsensor, bewegingsmelder, vraaggestuurd",
  },
  verdicts: {
    pass: "voldoet, ja, j, goed, akkoord, ok, in orde, voldoende, g",
    fail: "voldoet niet, nee, n, niet goed, onvoldoende, niet akkoord, afgekeurd, fout, te laag, afkeur, niet in orde, te weinig",
    neither: "niet gemeten, nvt, n v t, geen toegang, nog meten, niet bereikbaar",
  },
  dwellings: "woning, app, appartement, huis, kavel, bnr, bouwnummer, flat, won",
  totals: "totaal, gemiddelde, som, subtotaal, gem, gemiddeld",
  otherTests:
    "luchtdichtheid, blowerdoor, lekkage, toevoer, luchttoevoer, begroting, kanaallekkage, infiltratie, qv10, factuur, inblaas",
  fanTests:
    "afzuiging, ventilator, ventilatie, mechanische ventilatie, ventilatiemeting, afzuigdebieten",
  retest: "hermeting, tweede meting, hertest, nameting",
  labels: {
    constant: "constante, factor, kastfactor, kastconstante, coefficient",
    start:
      "begin, start, aanvang, startdatum, begin werk, aanvang werk, gestart op, start metingen",
    lowest: "laagste druk, minimale druk, druk vanaf",
    highest: "hoogste druk, maximale druk, druk tot",
  },
  sign: {
    box: "kast, box, doos, bak",
    room: "ruimte, kamer, vertrek",
    against: "tegen, ten opzichte, min, t o v, tov, minus",
    negative: "negatief bij afzuiging",
  },
};
