import { codesExplained, codesText, type Provenance } from "../../job";
import { cautions } from "../cautions";
import { looks } from "../looks";
import type { PlanRows } from "../plan-rows";
import { counted, figure } from "../words";

/** What the results rest on. */
export function addProvenance(rows: PlanRows, provenance: Provenance): void {
  const { version, edition, constants, window, judging, codes } = provenance;
  rows.section("What this rests on");
  const factors = constants.map(
    ({ text, fans, mark }) => `${text} (${counted(fans, "fan")}, ${mark})`,
  );
  rows.fact("Functions and checks", `Fanrow ${version}`);
  rows.fact("Edition", edition === undefined ? "none named" : `${edition.id}, ${edition.title}`);
  if (factors.length > 0) rows.fact("Flow constants", factors.join("; "));
  if (window)
    rows.fact(
      "Window of pressures",
      `${figure(window.low)} to ${figure(window.high)} Pa (${window.mark})`,
    );
  rows.fact("Judging", judging);
  rows.fact("Rows", `${provenance.rows}`);
  rows.fact("Codes", `${codesText(codes)}. ${codesExplained}`);
}

/** What the record does not say. */
export function addCautions(rows: PlanRows): void {
  rows.section("Read with this record");
  for (const caution of cautions) rows.line(caution, looks.note);
}

/** Lines to sign on. `span` columns for the name, the rest for the date. */
export function addSignatures(rows: PlanRows, roles: readonly string[]): void {
  const { length } = rows.columns;
  const [label, name] = [Math.ceil(length / 5), Math.ceil(length / 2)];
  rows.gap(6);
  for (const role of roles)
    rows.add(
      [
        { span: label, value: role, look: looks.signature },
        { span: name, value: null, look: looks.blank },
        { span: 1, value: "Date", look: looks.signature },
        { span: length - label - name - 1, value: null, look: looks.blank },
      ],
      26,
    );
}
