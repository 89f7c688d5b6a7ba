/** Words as firms of five countries put them over their columns and into their cells; invented. */
export interface Tongue {
  readonly name: string;
  readonly headings: Readonly<
    Record<
      | "dwelling"
      | "room"
      | "duty"
      | "opening"
      | "area"
      | "diameter"
      | "pressure"
      | "flow"
      | "required"
      | "verdict"
      | "tester"
      | "date"
      | "note",
      readonly string[]
    >
  >;
  readonly rooms: readonly string[];
  readonly kitchens: readonly string[];
  readonly continuous: readonly string[];
  readonly demand: readonly string[];
  readonly verdicts: readonly (readonly [string, string])[];
  readonly dwellings: readonly string[];
  readonly titles: readonly string[];
  readonly total: string;
  readonly decoys: readonly string[];
}

export const languages: readonly Tongue[] = [
  {
    name: "English",
    headings: {
      dwelling: [
        "Unit",
        "Lot",
        "Lot #",
        "Apt",
        "Apt.",
        "House",
        "Flat no.",
        "Dwelling",
        "Address",
        "Home",
      ],
      room: ["Room", "Location", "Fan location", "Room served", "Space", "Where"],
      duty: ["Mode", "Control", "Runs", "Operation", "Duty", "Switching", "Run mode"],
      opening: ["Plate", "Hole", "Ring", "Opening used", "Orifice"],
      area: ["Area", "Open area", "Hole area", "Opening area", "Opening size"],
      diameter: ["Diameter", "Hole dia.", "Dia", "Hole diameter"],
      pressure: [
        "Box pressure",
        "Box",
        "Pressure",
        "dP",
        "Gauge reading",
        "Box press.",
        "Pressure difference",
        "Manometer",
      ],
      flow: ["Flow", "Airflow", "Measured flow", "Actual", "Measured", "Exhaust flow", "Flow rate"],
      required: ["Required", "Req'd", "Minimum", "Min", "Need", "Target", "Design"],
      verdict: ["Result", "Pass/Fail", "P/F", "OK?", "Status", "Verdict"],
      tester: ["Tester", "Tech", "By", "Tested by", "Inspector", "Initials"],
      date: ["Date", "Test date", "Tested on", "Date tested"],
      note: ["Notes", "Remarks", "Comments"],
    },
    rooms: ["Bath", "Master bath", "Powder room", "Laundry", "Kitchen", "Half bath", "Guest bath"],
    kitchens: ["Kitchen"],
    continuous: ["continuous", "always on", "cont.", "24/7"],
    demand: ["switch", "timer", "intermittent", "humidity sensor"],
    verdicts: [
      ["Pass", "Fail"],
      ["P", "F"],
      ["OK", "NO"],
      ["yes", "no"],
    ],
    dwellings: ["Lot", "Unit", "Apt", "Home", "Site"],
    titles: ["Exhaust fan tests", "Bath fan flow log", "Ventilation readings, phase 2"],
    total: "Total",
    decoys: ["House pressure", "Floor area", "Unit Cost", "Email Address", "Model", "Watts"],
  },
  {
    name: "German",
    headings: {
      dwelling: ["Wohnung", "WE", "Haus-Nr.", "Einheit", "Whg."],
      room: ["Raum", "Zimmer", "Einbauort", "Raumbezeichnung"],
      duty: ["Betrieb", "Betriebsart", "Steuerung", "Schaltung"],
      opening: ["Blende", "Öffnung", "Loch Nr."],
      area: ["Fläche", "Öffnungsfläche", "Lochfläche", "Querschnitt"],
      diameter: ["Durchmesser", "Loch-Ø", "Lochdurchmesser"],
      pressure: ["Druck", "Kastendruck", "Δp", "Differenzdruck", "Unterdruck"],
      flow: ["Volumenstrom", "Luftmenge", "Istwert", "Abluftmenge", "gemessen"],
      required: ["Soll", "Sollwert", "Mindestwert", "gefordert"],
      verdict: ["Ergebnis", "Bewertung", "erfüllt?", "bestanden"],
      tester: ["Prüfer", "Monteur", "gemessen von", "Kürzel"],
      date: ["Datum", "Prüfdatum", "Messdatum"],
      note: ["Bemerkung", "Notiz"],
    },
    rooms: ["Bad", "Gäste-WC", "Küche", "HWR", "WC", "Dusche"],
    kitchens: ["Küche"],
    continuous: ["Dauer", "Dauerbetrieb", "Grundlast"],
    demand: ["Schalter", "Bedarf", "Nachlauf", "Feuchte"],
    verdicts: [
      ["i.O.", "n.i.O."],
      ["ja", "nein"],
      ["erfüllt", "nicht erfüllt"],
    ],
    dwellings: ["WE", "Wohnung", "Haus", "Top"],
    titles: ["Abluftmessung Wohnanlage", "Messprotokoll Lüfter"],
    total: "Summe",
    decoys: ["Hausdruck", "Wohnfläche", "Stückpreis", "E-Mail", "Typ"],
  },
  {
    name: "French",
    headings: {
      dwelling: ["Logement", "Appartement", "Lot", "N° logement", "Appt"],
      room: ["Pièce", "Local", "Pièce desservie", "Emplacement"],
      duty: ["Régime", "Fonctionnement", "Commande", "Marche"],
      opening: ["Orifice", "Plaque", "Diaphragme"],
      area: ["Surface", "Section", "Section libre", "Aire"],
      diameter: ["Diamètre", "Diam. trou"],
      pressure: ["Pression", "Dépression", "Pression caisson", "Δp"],
      flow: ["Débit", "Débit mesuré", "Débit extrait"],
      required: ["Débit requis", "Exigé", "Débit mini", "Minimum"],
      verdict: ["Conforme ?", "Résultat", "Verdict", "Avis"],
      tester: ["Technicien", "Opérateur", "Mesuré par", "Par"],
      date: ["Date", "Date de mesure", "Mesuré le"],
      note: ["Remarques", "Observations"],
    },
    rooms: ["Salle de bains", "WC", "Cuisine", "Salle d'eau", "Buanderie"],
    kitchens: ["Cuisine"],
    continuous: ["continu", "permanent", "en continu"],
    demand: ["interrupteur", "minuterie", "à la demande"],
    verdicts: [
      ["oui", "non"],
      ["conforme", "non conforme"],
      ["OK", "à refaire"],
    ],
    dwellings: ["Logement", "Appt", "Lot", "Villa"],
    titles: ["Mesure des débits d'extraction", "Essais VMC"],
    total: "Total",
    decoys: ["Pression maison", "Surface habitable", "Prix unitaire", "Adresse mail", "Modèle"],
  },
  {
    name: "Spanish",
    headings: {
      dwelling: ["Vivienda", "Piso", "Casa", "Nº vivienda", "Unidad"],
      room: ["Local", "Cuarto", "Estancia", "Habitación"],
      duty: ["Funcionamiento", "Modo", "Régimen", "Control"],
      opening: ["Placa", "Orificio", "Abertura"],
      area: ["Área", "Superficie", "Sección", "Área libre"],
      diameter: ["Diámetro", "Diám."],
      pressure: ["Presión", "Depresión", "Presión caja", "Δp"],
      flow: ["Caudal", "Caudal medido", "Medido"],
      required: ["Exigido", "Requerido", "Mínimo", "Caudal mínimo"],
      verdict: ["¿Cumple?", "Resultado", "Conforme", "Estado"],
      tester: ["Técnico", "Medido por", "Operador", "Iniciales"],
      date: ["Fecha", "Fecha de ensayo", "Día"],
      note: ["Observaciones", "Notas"],
    },
    rooms: ["Baño", "Aseo", "Cocina", "Lavadero", "Ducha"],
    kitchens: ["Cocina"],
    continuous: ["continuo", "permanente", "siempre"],
    demand: ["interruptor", "temporizador", "a demanda"],
    verdicts: [
      ["Cumple", "No cumple"],
      ["sí", "no"],
      ["apto", "no apto"],
    ],
    dwellings: ["Piso", "Vivienda", "Casa", "Portal"],
    titles: ["Medición de extractores", "Ensayo de extracción"],
    total: "Total",
    decoys: ["Presión casa", "Superficie útil", "Precio unitario", "Correo electrónico", "Modelo"],
  },
  {
    name: "Dutch",
    headings: {
      dwelling: ["Woning", "Appartement", "Huisnr.", "Bouwnummer", "Kavel"],
      room: ["Ruimte", "Vertrek", "Locatie"],
      duty: ["Bediening", "Werking", "Stand", "Regeling"],
      opening: ["Plaat", "Ring", "Opening"],
      area: ["Oppervlak", "Doorlaat", "Vrije doorlaat", "Oppervlakte opening"],
      diameter: ["Diameter", "Gatdiameter", "Doorsnede"],
      pressure: ["Druk", "Kastdruk", "Drukverschil", "Onderdruk"],
      flow: ["Debiet", "Luchtdebiet", "Gemeten", "Volumestroom"],
      required: ["Eis", "Vereist", "Minimaal", "Norm"],
      verdict: ["Voldoet?", "Oordeel", "Resultaat", "Akkoord"],
      tester: ["Monteur", "Gemeten door", "Controleur", "Naam"],
      date: ["Datum", "Meetdatum", "Gemeten op"],
      note: ["Opmerking", "Bijzonderheden"],
    },
    rooms: ["Badkamer", "Toilet", "Keuken", "Wasruimte", "Douche"],
    kitchens: ["Keuken"],
    continuous: ["continu", "altijd aan", "doorlopend"],
    demand: ["schakelaar", "timer", "op vraag"],
    verdicts: [
      ["ja", "nee"],
      ["voldoet", "voldoet niet"],
      ["goed", "onvoldoende"],
    ],
    dwellings: ["Woning", "App", "Kavel", "Huis"],
    titles: ["Ventilatiemeting afzuiging", "Meetrapport ventilatoren"],
    total: "Totaal",
    decoys: ["Woningdruk", "Vloeroppervlak", "Stuksprijs", "E-mail", "Type"],
  },
];

export function decoys(tongue: Tongue): string[] {
  return tongue.decoys.map((heading) => `decoy:${heading}`);
}
