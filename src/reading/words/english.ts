import type { Language } from "./language";

export const english: Language = {
  name: "English",
  headings: {
    dwelling: {
      4: "dwelling, lot, lot no, apartment, apt, apt no, flat, plot, suite, home, house, house no, dwelling unit, residence, cabin, villa, townhouse, property, condo, door no",
      3: "unit, unit no, address, homesite, building and unit, parcel, address and unit",
      1.5: "site, building, bldg, block, job no, location, customer",
    },
    fan: {
      4: "fan tag, fan no, fan id, fan number, tag, fan ref, ef no",
      3: "fan, exhaust fan, equipment, item, unit tag",
      1.5: "device, appliance, no, mark, id, ref",
    },
    room: {
      4: "room, room served, space, space served, area served, room kind, room type, fan room, room name, served",
      3: "fan location, location, where, grille, serves, fan",
    },
    duty: {
      4: "duty, mode, runs, runs on, operation, control, controls, switching, switched by, run mode, running, operating mode, control type, schedule, run, cont or int, fan mode, fan control",
      3: "on, use, runtime, how run, setting, int/cont, c/i, operated by, activation, switch, type of operation, cont/demand, demand/cont",
      1: "type",
    },
    box: {
      4: "box no, box id, box number, box used, flow box, box name, which box, box serial",
      3: "box",
    },
    opening: {
      4: "opening used, opening id, hole id, opening code, hole no, plate, ring, orifice plate, insert, openings in use, slot, plate no, lid, hole used, opening name, openings, panel, hole setting",
      3: "hole, opening, orifice, config, configuration, setup, door, range",
    },
    area: {
      4: "area, open area, opening area, hole area, free area, orifice area, plate area, net area, area of opening",
      3: "hole, opening, opening size, hole size, size, orifice, aperture, gap",
      2: "slot, sq",
    },
    diameter: {
      4: "diameter, hole diameter, dia, orifice diameter, hole dia",
      2: "d, hole, ring size",
    },
    pressure: {
      4: "box pressure, box pa, pressure, box dp, dp, delta p, differential pressure, pressure difference, gauge reading, manometer, manometer reading, box press, pressure in box, suction, depression, gauge, box reading",
      3: "reading, box, vacuum, chamber pressure, reading pa, p, negative pressure",
      2: "measured pressure",
    },
    flow: {
      4: "flow, air flow, airflow, measured flow, flow rate, measured, measured cfm, actual, actual flow, actual cfm, exhaust flow, fan flow, volume flow, flow hood, hood reading, tested flow, tested cfm, measured rate, exhaust rate",
      3: "cfm, flow measured, result cfm, exhaust, hood, computed flow, calc flow, test flow, q, rate, air volume, volume",
      2: "final, reading, test result, calculated",
    },
    required: {
      4: "required, req, required flow, required cfm, minimum, min, min flow, minimum flow, need, needed, design, design flow, spec, specified, target, code min, code minimum, must have, must be, criterion, requirement, standard, code, acceptance, should be, limit, minimum rate, least, at least",
      3: "pass at, rule, goal, setpoint, called for, threshold",
    },
    verdict: {
      4: "pass/fail, p/f, pass, pass fail, ok, okay, result, verdict, outcome, status, compliant, compliance, complies, accept, accept/reject, a/r, y/n, meets, pass or fail, acceptable, accepted, meets code, good",
      2: "final, test, check, 1st, first, comply, judgement, grade, finding",
    },
    tester: {
      4: "tester, tested by, tech, technician, by, inspector, initials, init, measured by, who, operator, rater, insp, done by, verifier, crew, checked by, taken by, test by, read by, engineer",
      2: "name, signed, staff",
    },
    date: {
      4: "date, test date, tested on, date tested, on, day, tested, measured on, visit, date of test, retest date, checked on, when, test day, inspection date",
      2: "test",
    },
    rated: {
      4: "rated, rated flow, rated cfm, nameplate, nominal, label cfm, nameplate cfm, nominal flow, catalogue flow, catalog cfm, rating, listed flow, listed cfm, certified flow, name plate, rated capacity, certified cfm, manufacturer cfm",
    },
    constant: {
      4: "constant, factor, box constant, box factor, coefficient, k, c, k factor, box k",
    },
    note: {
      4: "note, remark, comment, observation, action, fix done, repair, follow up, fix, fix needed, notes and actions, findings, memo, work done, reason",
    },
    other: {
      6: "unit cost, email, email address, unit price, house pressure, house pa, floor area, floor, cond area, house area, conditioned area, duct pressure, duct size, static pressure, room area, room volume, ceiling height, serial, serial no, serial number, phone, model, model no, fan model, make, house type, plan, plan type, percent of design, of design, of required, percent, ratio, price, cost, amount, total, house volume, unit type, flat type, room temperature, barometer, zip code, post code, fan type, all ok, house temp, supplier, weather, wind, ambient pressure, barometric pressure, temperature, gauge no, gauge id, meter id, meter no, manometer id, duct pa, house depressurization, cz pressure, zone pressure, ref pressure, reference pressure, invoice, quantity, qty, permit, permit no, certificate no, budget, salary, line no, row, seq, item no, filter, grille size, duct diameter, duct dia, duct area, stairwell pressure, fan speed, page, opening hours, area code, opening date, flow meter no, test no, run no, ductwork, whole house pressure, house wrt outside, stat, tag no of meter, climate zone, zone",
      5: "outlet, watts, sones, sone, duct, type, model number, brand, temp, humidity, rh, volume, bedrooms, beds, storey, level, story, time, voltage, amps, hours, noise, sound, db, age, year, color, count, difference, diff, margin, deviation, surplus, shortfall, variance, short by, over, excess, delta, error, elevation, width, height, length, rank, velocity, picture, photo, weight, email, contact, ceiling, ach, occupants, rent, tenant, owner, builder, client",
      3: "rating type, phase, sqrt, root, sq root, fan power, speed",
    },
  },
  rooms: {
    bathroom:
      "bath, bathroom, shower, shower room, en suite, ensuite, mbath, mstr bath, master bath, wet room, bunk bath, hall bath, ba, bth, guest bath, main bath, primary bath, b1, b2, b3, jack and jill, owner bath, mba, hba, tub",
    "half bath":
      "half bath, powder, powder room, pwdr, pwd, wc, toilet, cloakroom, lavatory, restroom, water closet, cloaks, guest wc, cloak, washroom, pdr",
    kitchen: "kitchen, kit, galley, kitchenette, ktch, ktn",
    "kitchen hood": "hood, range hood, kitchen hood, cooker hood, range, downdraft",
    laundry:
      "laundry, utility, laundry room, laun, ldy, util, utility room, dryer, washer dryer, w d, laundry closet, lndry, mud room",
    other:
      "garage, basement, crawl, attic, whole house, hall, corridor, store, closet, bedroom, living room, sauna, janitor, trash, storage, mech, mechanical, office, shop, pantry, spa, gym, cupboard, workshop, plant room",
  },
  duties: {
    continuous:
      "continuous, cont, constant, always on, always, 24/7, 24 7, 24h, 24 h, 24hr, all the time, trickle, low, low const, runs all day, nonstop, non stop, all day, background, permanent, 100 %, whole day, c, whole house",
    "on demand":
      "intermittent, int, switch, sw, switched, on demand, demand, timer, humidity, humidistat, hum, humid, motion, motion sensor, occupancy, occupancy sensor, sensor, manual, wall switch, boost, light switch, dcv, pull cord, pir, as needed, with light, when used, delay timer, local, spot, user, i, boost switch",
  },
  verdicts: {
    pass: "pass, p, ok, okay, yes, y, good, accept, accepted, a, compliant, complies, meets, fine, met, passed, conforms, true, satisfactory, acceptable, ✓, ✔, √, +, approved, in",
    fail: "fail, f, no, n, no good, not ok, weak, reject, rejected, r, non compliant, noncompliant, does not meet, short, failed, bad, low, retest, not compliant, false, unsatisfactory, x, ✗, ✘, ✕, ×, -, below, ng, deficient, not met, unacceptable, too low, out",
    neither:
      "not tested, n/a, na, tbd, pending, no access, not measured, untested, skipped, locked, absent, open, no reading, not done, todo",
  },
  dwellings:
    "lot, unit, apt, apartment, flat, plot, suite, house, home, site, bldg, building, cabin, block, room, villa, townhouse, no, condo, dwelling, residence, door",
  totals:
    "total, subtotal, sum, average, mean, avg, median, all, count, max, min, grand total, overall, dwelling total, homes ok, fans, pass rate",
  otherTests:
    "duct leakage, duct leak, duct test, duct blaster, blower door, door fan, air tightness, airtightness, envelope leakage, envelope, infiltration test, supply, supply air, air handler, return air, pitot, traverse, cfm50, ach50, hydronic, water flow, pump, gpm, nozzle, budget, invoice, payroll, price list, register grille, diffuser, balancing of supply",
  fanTests:
    "exhaust, exhaust fan, fan flow, fan, bath fan, extract, extract fan, ventilation, flow box, fan test, fan log, powered hood, flow hood, hood readings, hood log",
  retest: "retest, re test, second test, 2nd test, after repair, after fix, repeat test",
  labels: {
    constant: "constant, factor, box constant, box factor, k, box k, coefficient, flow constant, c",
    start:
      "start, contract start, works started, job start, started, start date, begin, work began, start of work, job began, project start, commenced, start of job, first visit, testing began, site start",
    lowest:
      "lowest pa, lowest pressure, min pa, minimum pressure, lowest, low limit, min pressure, pressure from, at least pa",
    highest:
      "highest pa, highest pressure, max pa, maximum pressure, highest, high limit, max pressure, pressure to, at most pa",
  },
  sign: {
    box: "box, chamber, hood",
    room: "room, space, house, ambient",
    against:
      "minus, against, versus, relative, wrt, less, with reference to, to, vs, with respect to, below, rel, compared",
    negative:
      "negative is normal, negative when exhausting, exhaust reads negative, reads negative",
  },
};
