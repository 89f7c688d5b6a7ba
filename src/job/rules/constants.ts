import type { System } from "../../editions";

/**
 * The trade's flow constant: cfm from in² and √Pa (C ≈ 0.606 at 1.2 kg/m³), and its SI twin.
 * Common practice; the SI value is 1.07 carried over exactly, since the trade states no other.
 */
export const usualConstant: Readonly<Record<System, number>> = {
  ip: 1.07,
  si: (1.07 * 0.3048 ** 3 * 1000) / 60 / (2.54 * 2.54),
};
