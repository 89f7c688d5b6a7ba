import type { Language } from "./language";

export const french: Language = {
  name: "French",
  headings: {
    dwelling: {
      4: "logement, appartement, appt, lot, maison, no logement, n logement, villa, pavillon, log, no lot, habitation, apt, logt, studio",
      2: "adresse, batiment, bat, site, residence, chantier",
    },
    fan: {
      4: "ventilateur, no ventilateur, extracteur, repere, bouche no, no bouche, n bouche, rep, caisson",
      2: "bouche, appareil, equipement, no, n",
    },
    room: {
      4: "piece, local, piece desservie, pieces, nom piece, salle",
      3: "endroit, emplacement, lieu, bouche",
    },
    duty: {
      4: "regime, fonctionnement, mode, commande, marche, mode de fonctionnement, asservissement, pilotage",
      2: "type, usage",
    },
    box: {
      4: "no boite, boite no, no caisson, caisson no, boite utilisee",
      3: "boite, caisson",
    },
    opening: {
      4: "orifice, ouverture, trou, plaque, diaphragme, no orifice, plaquette, opercule, bague, obturateur",
      2: "repere orifice, reglage",
    },
    area: {
      4: "surface, section, aire, surface ouverte, surface orifice, section libre, section orifice, aire ouverture, section ouverte",
      3: "orifice, ouverture, trou",
    },
    diameter: { 4: "diametre, diameter, diam, diametre trou, diametre orifice, d", 2: "trou" },
    pressure: {
      4: "pression, depression, dp, pression caisson, pression boite, delta p, pression differentielle, ecart de pression, pression du caisson, dp caisson, pression mesuree, dp boite",
      3: "lecture, mesure, boite, caisson",
    },
    flow: {
      4: "debit, debit mesure, debit air, debit extrait, mesure debit, debit d air, debit obtenu, debit releve, debit lu, debit calcule",
      3: "mesure, resultat, q, extraction, releve",
    },
    required: {
      4: "requis, debit requis, exige, minimum, mini, debit mini, debit minimum, reglementaire, debit reglementaire, attendu, min, seuil, exigence, debit exige, a atteindre, debit min, consigne, debit nominal requis, demande",
      2: "norme, theorique",
    },
    verdict: {
      4: "conforme, resultat, verdict, conformite, ok, avis, bilan, c/nc, statut, decision, conforme non conforme, o/n, bon",
      2: "controle, etat",
    },
    tester: {
      4: "technicien, operateur, controleur, par, mesure par, testeur, initiales, nom, verificateur, tech, visa, releve par, intervenant, agent",
      2: "qui",
    },
    date: {
      4: "date, jour, mesure le, le, date mesure, date essai, date de mesure, date visite, releve le, date releve",
      2: "essai",
    },
    rated: {
      4: "debit nominal, nominal, plaque signaletique, debit constructeur, debit catalogue, debit plaque",
    },
    constant: { 4: "constante, coefficient, facteur, k, constante boite, coef, coeff" },
    note: { 4: "remarque, observation, commentaire, note, action, a faire, rem, obs" },
    other: {
      6: "surface habitable, surface plancher, surface logement, pression maison, pression logement, modele, type de ventilateur, type logement, marque, prix, prix unitaire, cout, telephone, temperature, numero de serie, courriel, adresse mail, email, diametre conduit, diametre gaine, type, surface piece, pression atmospherique, reference, cout unitaire, montant, no serie, hauteur, shab, mail, e mail, pression reseau, pression gaine, surface au sol, no manometre, manometre, vent, typologie",
      5: "etage, ecart, pourcentage, puissance, volume, heure, gaine, niveau, bruit, nombre, age, conduit, annee, occupants, chambres, difference, rapport, escalier, total, racine",
    },
  },
  rooms: {
    bathroom:
      "salle de bains, sdb, salle d eau, douche, bain, sde, salle de bain, bains, salle d eau parents, s de b",
    "half bath": "wc, toilettes, toilette, cabinet, w c, sanitaire",
    kitchen: "cuisine, kitchenette, coin cuisine, cuis",
    "kitchen hood": "hotte, hotte cuisine",
    laundry: "buanderie, lingerie, laverie, buand",
    other:
      "cellier, cave, garage, couloir, sejour, chambre, debarras, dressing, entree, salon, local technique",
  },
  duties: {
    continuous:
      "continu, permanent, en continu, toujours, constant, en permanence, permanente, vmc continue, cont",
    "on demand":
      "interrupteur, minuterie, intermittent, sur demande, a la demande, detecteur, presence, hygro, hygrostat, bouton, ponctuel, temporise, hygrometrie, inter, detection, temporisation, cordelette, hygroreglable",
  },
  verdicts: {
    pass: "conforme, oui, o, ok, bon, c, valide, satisfaisant, correct, atteint",
    fail: "non conforme, non, nc, insuffisant, mauvais, faible, a refaire, refus, n, pas conforme, trop faible, non atteint, a reprendre, refuse",
    neither: "non mesure, sans objet, so, absent, pas acces, non teste, a mesurer, pas d acces",
  },
  dwellings:
    "logement, appartement, appt, lot, maison, villa, log, apt, bat, batiment, pavillon, studio",
  totals: "total, moyenne, somme, sous total, moy, ensemble",
  otherTests:
    "porte soufflante, etancheite, permeabilite, fuite, infiltrometrie, soufflage, insufflation, budget, reseau de gaines, devis, facture",
  fanTests: "extraction, ventilateur, vmc, extracteurs, debits extraits, ventilation, bouches",
  retest: "contre mesure, nouvelle mesure, seconde mesure, 2e mesure, reprise",
  labels: {
    constant:
      "constante, coefficient, facteur, coefficient de la boite, constante de la boite, coef",
    start:
      "debut, debut des travaux, demarrage, debut du chantier, commence le, debut des mesures, debut chantier",
    lowest: "pression mini, pression minimum, pression minimale, plus basse pression",
    highest: "pression maxi, pression maximum, pression maximale, plus haute pression",
  },
  sign: {
    box: "boite, caisson, caisse, hotte",
    room: "piece, local, ambiance",
    against: "moins, par rapport, contre, relative, vs",
    negative: "negatif en extraction, negative en extraction",
  },
};
