import type { AstExpression } from "@borgar/fx/xlsx";
import type { CellValue } from "../../cells";
import type { Run } from "../program";
import type { Expr, Mode, Scope } from "./expr";

/** LET: each name is worked out once, in order, and read from where it is kept. */
export function letExpr(
  declarations: readonly { id: { name: string }; init: AstExpression | null }[],
  body: AstExpression | null,
  mode: Mode,
  scope: Scope,
): Expr {
  const { locals } = scope;
  const before = new Map(locals);
  const steps = declarations.map(({ id, init }) => {
    const expr = scope.compile(init, mode);
    let kept: ReturnType<Run> = null;
    const read = () => kept;
    const isRange = expr.isRange === true;
    const local = expr.one ? { run: read, one: read as () => CellValue } : { run: read, isRange };
    locals.set(id.name.toLowerCase(), local);
    const evaluate = expr.one ?? expr.run;
    return (row: number, col: number) => {
      kept = evaluate(row, col);
    };
  });
  const { run, one, isRange } = scope.compile(body, mode);
  locals.clear();
  for (const [name, expr] of before) locals.set(name, expr);
  const prepared =
    <T>(then: (row: number, col: number) => T) =>
    (row: number, col: number) => {
      for (const step of steps) step(row, col);
      return then(row, col);
    };
  if (one) return { run: prepared(run), one: prepared(one) };
  return { run: prepared(run), isRange: isRange === true };
}
