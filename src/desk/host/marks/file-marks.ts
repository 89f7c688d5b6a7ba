import { translateFormulaToA1 } from "@borgar/fx";
import { cellName, type Rectangle } from "../../../cells";
import type {
  ConditionalOperator,
  ConditionalFormat as FileFormat,
  Sheet,
} from "../../../workbook";
import { rangesOf, refOf } from "../refs-text";
import { type CellValueRule, ConditionalFormat } from "./conditional-format";

type Operator = CellValueRule["operator"];

const operators: Readonly<Record<Operator, ConditionalOperator>> = {
  EqualTo: "equal",
  NotEqualTo: "notEqual",
  GreaterThan: "greaterThan",
  LessThan: "lessThan",
  GreaterThanOrEqual: "greaterThanOrEqual",
  LessThanOrEqual: "lessThanOrEqual",
  Between: "between",
  NotBetween: "notBetween",
};

/** The conditional formats of a sheet's file, highest priority first. */
export function marksOf(sheet: Sheet): ConditionalFormat[] {
  return sheet.conditionalFormats.map((format, i) => {
    const id = `{${String(i + 1).padStart(8, "0")}-0000-4000-a000-000000000000}`;
    const type = format.operator === null ? "Custom" : "CellValue";
    const mark = new ConditionalFormat(id, type, rangesOf(format.ref));
    const [first = "", second] = format.formulas.map((formula) => `=${formula}`);
    if (format.operator === null) mark.formula = first;
    else
      mark.cellValue = {
        formula1: first,
        formula2: second,
        operator: operatorNamed(format.operator),
      };
    const { fill, color, bold, italic } = format.look;
    mark.fill = fill === undefined ? undefined : `#${fill}`;
    mark.color = color === undefined ? undefined : `#${color}`;
    mark.bold = bold;
    mark.italic = italic;
    mark.stopIfTrue = format.stopIfTrue;
    mark.inFile = { formats: [format], state: mark.state() };
    if (format.dxfId !== undefined)
      mark.fileLook = { dxfId: format.dxfId, look: JSON.stringify(lookOf(mark)) };
    return mark;
  });
}

function operatorNamed(operator: ConditionalOperator): Operator {
  return (Object.keys(operators) as Operator[]).find(
    (name) => operators[name] === operator,
  ) as Operator;
}

/**
 * The conditional formats as the file is to have them. For those that did not change they are the
 * very objects of the sheet, so that they stay in the file as they stand.
 */
export function fileFormatsOf(marks: readonly ConditionalFormat[]): FileFormat[] {
  return marks.flatMap((mark) => {
    if (mark.inFile?.state !== mark.state())
      mark.inFile = { formats: formatsOf(mark), state: mark.state() };
    return mark.inFile.formats;
  });
}

/** One format of the file, or one a range where the formula reads other cells from each of them. */
function formatsOf(mark: ConditionalFormat): FileFormat[] {
  const { ranges, cellValue, formula } = mark;
  if (ranges.length === 0 || mark.pattern() === null) return [];
  const written =
    mark.type === "Custom"
      ? [formula]
      : [cellValue?.formula1 ?? "", ...(cellValue?.formula2 ? [cellValue.formula2] : [])];
  const patterns = written.map((text) => mark.relative(text));
  const formulasAt = ({ top, left }: Rectangle) =>
    patterns.map((text) => translateFormulaToA1(text, cellName(top, left), { wrapEdges: false }));
  const first = formulasAt(ranges[0] as Rectangle);
  const isSame = ranges.every((range) => String(formulasAt(range)) === String(first));
  const look = lookOf(mark);
  const { fileLook } = mark;
  const shared = {
    operator: mark.type === "Custom" ? null : operators[(cellValue as CellValueRule).operator],
    stopIfTrue: mark.stopIfTrue,
    look,
    dxfId: fileLook?.look === JSON.stringify(look) ? fileLook.dxfId : undefined,
  };
  return isSame
    ? [{ ref: refOf(ranges), formulas: first, ...shared }]
    : ranges.map((range) => ({ ref: refOf([range]), formulas: formulasAt(range), ...shared }));
}

function lookOf({ fill, color, bold, italic }: ConditionalFormat) {
  return { fill: fill?.slice(1), color: color?.slice(1), bold, italic };
}
