/** Words over the columns of a list of lots, in the languages that are read; data like the others. */
export const lotWords = {
  count:
    "units, no of units, number of units, no of dwellings, number of dwellings, no of lots, count, qty, quantity, how many, anzahl, wohnungen, nombre de logements, cantidad, aantal",
  name: "lot, lot no, unit, unit no, home, house, house no, dwelling, plot, apartment, apt, address, homesite, site, flat, wohnung, haus, haus no, los, los no, parzelle, bauplatz, grundstuck, we, wohneinheit, logement, maison, vivienda, casa, woning, huis, kavel",
  plan: "plan, plan type, model, house type, plan name, unit type, floor plan, elevation, elevation plan, haustyp, grundriss, wohnungstyp, typ, type de maison, tipo, type",
  phase:
    "phase, release, stage, section, building phase, filing, tract, bauabschnitt, abschnitt, tranche, fase",
  floor:
    "floor area, area, conditioned area, conditioned floor area, cond floor area, conditioned, conditioned space, heated area, heated, cfa, size, living area, square feet, sq ft, wohnflache, flache, surface, surface habitable, superficie, oppervlakte, woonoppervlak",
  bedrooms:
    "bedrooms, beds, bed, br, no of bedrooms, bed rooms, schlafzimmer, chambres, dormitorios, slaapkamers",
  fans: "fans, exhaust fans, no of fans, fan count, ventilatoren, lufter, ventilateurs, ventiladores",
  rooms: "rooms, wet rooms, rooms with fans, rooms served, raume, pieces, cuartos, ruimtes",
  room: "room, space, room served, location, area served, raum, piece, habitacion, ruimte",
  kind: "room kind, room type, kind of room, raumart, type de piece",
  tag: "fan, tag, fan tag, fan id, fan no",
  duty: "duty, runs, runs on, control, operation, mode, switching, betrieb, commande, bediening",
  whole:
    "whole house, whole dwelling, for the whole dwelling, whole house fan, ganze wohnung, toute la maison",
  volume: "volume, room volume, volumen",
  ductKind: "duct, duct kind, duct type, kanal, gaine, conducto, kanaal",
  ductDiameter:
    "duct diameter, duct size, dia, duct dia, diameter, durchmesser, diametre, diametro",
  ductLength: "duct length, run, duct run, length, lange, longueur, longitud, lengte",
  elbows: "elbows, bends, elbow, bogen, coudes, codos, bochten",
  box: "box, flow box, messbox",
} as const;

export type LotRole = keyof typeof lotWords;
