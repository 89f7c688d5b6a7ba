import { cellName, isRoundingOf, type Spot, significant } from "../cells";
import type { Job, JobFile } from "../job";
import { seenAt } from "./places";
import type { Read, Trace } from "./trace-data";

const seenIn = (file: JobFile, { sheet, row, col }: Spot) => seenAt(sheet, row, col, file);

/**
 * A typed flow of a firm's sheet, with what its row gives: constant × area × √|pressure| by the
 * cells of the row, in the units of the sheet. Any other trace as it is.
 */
export function withRow(found: Trace, { file, fans, firm }: Job): Trace {
  if (found.kind !== "typed" || !fans || !firm) return found;
  const { sheet, top, left } = found.place;
  const i = fans.table
    .readingsAt(sheet, top, left)
    .find((each) => fans.table.ref("flow", each) === cellName(top, left));
  if (i === undefined || typeof found.value !== "number") return found;
  const { block, own } = firm.at(i);
  const { constant } = block.habits;
  const hole = block.roles.has("area") ? "area" : "diameter";
  const [area, pressure] = [block.number(own, hole), block.number(own, "pressure")];
  if (!constant || area === null || pressure === null) return found;
  const size = Math.abs(pressure);
  const given = constant.value * (hole === "area" ? area : area ** 2) * Math.sqrt(size);
  const [k, a, p, flow] = [constant.value, area, size, given].map((value) => significant(value));
  const stated = constant.stated && seenIn(file, constant.stated);
  const because = stated ? `that of ${stated.name}` : "the one that the sheet's flows give";
  const cells = [block.place(own, hole), block.place(own, "pressure")].map(
    (place) => place && seenIn(file, place),
  );
  const reads = [...cells, stated?.value === constant.value && stated].flatMap((seen): Read[] => {
    if (!seen) return [];
    return [{ text: seen.name, place: seen.place, cells: [seen], count: 1, filled: 1 }];
  });
  return {
    ...found,
    given: `${k} × ${a}${hole === "area" ? "" : "²"} × √${p} = ${flow}; the constant is ${because}`,
    reads,
    agreement: isRoundingOf(found.value, given)
      ? { state: "agrees" }
      : { state: "differs", fresh: given },
  };
}
