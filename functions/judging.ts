import { type RangeStatus, readStatus, verdictColumn } from "../src/job";
import { fromError, missing } from "./problem";
import { pick, Rows } from "./rows";

/**
 * Whether a flow meets its required rate. No flow is "not measured"; out of range is "retest".
 * @customfunction VERDICT
 * @helpurl https://localhost:3443/help/verdict.html
 * @param {any[][]} flow Measured flow: one cell or a range.
 * @param {any[][]} required Required rate in the same unit: one cell or a range.
 * @param {any[][]} [status] Range status of the reading, as RANGE_STATUS gives it.
 * @returns {any[][]} "meets", "short", "retest" or "not measured".
 */
export function verdictOf(flow: any[][], required: any[][], status: any[][]): any[][] {
  const rows = new Rows({ flow, required, status });
  const Q = rows.numbers("flow", { blank: "allowed" });
  const R = rows.numbers("required", { blank: "allowed" });
  const statuses = rows.has("status") ? readStatuses(rows) : undefined;
  const verdicts = verdictColumn(Q, R, rows.length, statuses);
  return rows.result((i) => {
    if (!Number.isNaN(pick(R, i))) return verdicts[i];
    return Number.isNaN(pick(Q, i)) ? "" : missing("the required rate is blank");
  });
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
