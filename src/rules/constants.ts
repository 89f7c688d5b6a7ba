import type { System } from "../editions";

/**
 * The trade's flow constant: cfm from in² and √Pa (C ≈ 0.606 at 1.2 kg/m³), and its SI twin.
 * Common practice; the SI value is 1.07 carried over exactly, since the trade states no other.
 */
export const usualConstant: Readonly<Record<System, number>> = {
  ip: 1.07,
  si: (1.07 * 0.3048 ** 3 * 1000) / 60 / (2.54 * 2.54),
};

/**
 * What a field manometer may be off, the larger of percent of the reading and a floor in Pa, and
 * its smallest step in Pa: ANSI/RESNET/ICC 380, section 6, from memory.
 */
export const usualMeter = { percent: 1, floor: 0.25, resolution: 0.1 } as const;

/** Standard spread of a constant that no proof has told, percent: common practice. */
export const usualConstantSpread = 2;

/** Days for which a check of a box or an instrument holds: common practice. */
export const usualInterval = 365;

/** One opening is good for about this window, Pa. */
export const usualWindow = { low: 1, high: 8 } as const;

/** The chance asked for where a guard names none. */
export const usualGuardChance = 0.95;
