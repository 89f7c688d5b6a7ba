import { type RangeStatus, readStatus, usualGuardChance, verdictColumn } from "../src/job";
import { acceptFrom, chanceMet } from "../src/spread";
import { fromError, missing } from "./problem";
import { pick, Rows } from "./rows";

const chanceRange = (value: number) =>
  value >= 0.5 && value < 1 ? undefined : "give a chance from 0.5 to below 1, such as 0.95";
const spreadRange = (value: number) => (value >= 0 ? undefined : "give a spread of 0 or more");

/**
 * Whether a flow meets its required rate. No flow is "not measured"; out of range is "retest".
 * With a spread it must be sure enough, or the answer is "too close to call".
 * @customfunction VERDICT
 * @helpurl https://localhost:3443/help/verdict.html
 * @param {any[][]} flow Measured flow: one cell or a range.
 * @param {any[][]} required Required rate in the same unit: one cell or a range.
 * @param {any[][]} [status] Range status of the reading, as RANGE_STATUS gives it.
 * @param {any[][]} [spread] Standard spread of the flow; blank or left out: simple acceptance.
 * @param {any[][]} [chance] How sure to be, 0.5 to below 1; 0.95 where blank or left out.
 * @returns {any[][]} "meets", "short", "too close to call", "retest" or "not measured".
 */
export function verdictOf(
  flow: any[][],
  required: any[][],
  status: any[][],
  spread: any[][],
  chance: any[][],
): any[][] {
  const rows = new Rows({ flow, required, status, spread, chance });
  const Q = rows.numbers("flow", { blank: "allowed" });
  const R = rows.numbers("required", { blank: "allowed" });
  const statuses = rows.has("status") ? readStatuses(rows) : undefined;
  const optional = (name: string, refuse: (value: number) => string | undefined) =>
    rows.has(name) ? rows.numbers(name, { blank: "allowed", refuse }) : Number.NaN;
  const u = optional("spread", spreadRange);
  const chances = optional("chance", chanceRange);
  const guard = rows.has("spread") ? { spread: u, chance: chances } : undefined;
  const verdicts = verdictColumn(Q, R, rows.length, statuses, guard);
  return rows.result((i) => {
    if (!Number.isNaN(pick(R, i))) return verdicts[i];
    return Number.isNaN(pick(Q, i)) ? "" : missing("the required rate is blank");
  });
}

/**
 * Chance that the flow truly meets the required rate, given how far the reading may be off.
 * @customfunction CHANCE_MET
 * @helpurl https://localhost:3443/help/chance-met.html
 * @param {any[][]} flow Measured flow: one cell or a range.
 * @param {any[][]} spread Standard spread of the flow, 0 or more, in its unit.
 * @param {any[][]} required Required rate in the same unit.
 * @returns {any[][]} Chance, 0 to 1.
 */
export function chanceMetOf(flow: any[][], spread: any[][], required: any[][]): any[][] {
  const rows = new Rows({ flow, spread, required });
  const Q = rows.numbers("flow", { blank: "nothing yet" });
  const u = rows.numbers("spread", { refuse: spreadRange });
  const R = rows.numbers("required");
  return rows.result((i) => chanceMet(pick(Q, i), pick(u, i), pick(R, i)));
}

/**
 * Least measured flow from which the required rate is met with a wanted chance.
 * @customfunction ACCEPT_FROM
 * @helpurl https://localhost:3443/help/accept-from.html
 * @param {any[][]} required Required rate: one cell or a range.
 * @param {any[][]} spread Standard spread of the flow, 0 or more, in the unit of the rate.
 * @param {any[][]} [chance] How sure to be, 0.5 to below 1; 0.95 where left out.
 * @returns {any[][]} Acceptance limit in the unit of the rate.
 */
export function acceptFromOf(required: any[][], spread: any[][], chance: any[][]): any[][] {
  const rows = new Rows({ required, spread, chance });
  const R = rows.numbers("required", { blank: "nothing yet" });
  const u = rows.numbers("spread", { refuse: spreadRange });
  const p = rows.numbers("chance", { otherwise: usualGuardChance, refuse: chanceRange });
  return rows.result((i) => acceptFrom(pick(R, i), pick(u, i), pick(p, i)));
}

function readStatuses(rows: Rows): (RangeStatus | undefined)[] {
  const statusOf = rows.texts("status");
  const statuses = new Array<RangeStatus | undefined>(rows.length);
  for (let i = 0; i < rows.length; i++)
    try {
      statuses[i] = readStatus(statusOf(i));
    } catch (error) {
      rows.refuse(i, fromError(error));
    }
  return statuses;
}
