/** An error value in a cell, as a host passes it. */
export class CellFault {
  constructor(
    readonly code: string,
    readonly message: string,
  ) {}
}

/** Something that is neither a value nor an error: an entity, an image, a function. */
export const strange = Symbol("strange");

/**
 * A cell as a plain value: null for a blank one, whether the host passes null, nothing or an empty
 * text. An object is an error only if it says so; a value with a format or an entity is the basic
 * value in it.
 */
export function plainCell(
  cell: unknown,
): number | string | boolean | null | CellFault | typeof strange {
  switch (typeof cell) {
    case "number":
    case "boolean":
      return cell;
    case "string":
      return cell.trim() === "" ? null : cell;
    case "undefined":
      return null;
    case "object":
      return cell === null ? null : ofObject(cell as Readonly<Record<string, unknown>>);
    default:
      return strange;
  }
}

function ofObject(cell: Readonly<Record<string, unknown>>): ReturnType<typeof plainCell> {
  const { code, error, type, basicType, basicValue, message } = cell;
  const isError = type === "Error" || basicType === "Error";
  const said = [code, error, isError ? basicValue : undefined].find(
    (each): each is string => typeof each === "string" && each.startsWith("#"),
  );
  if (said !== undefined) return new CellFault(said, typeof message === "string" ? message : "");
  if (isError) return new CellFault("#VALUE!", "");
  return typeof basicValue === "object" ? strange : plainCell(basicValue ?? strange);
}

/** Rows of cells: of a range, of one row of it, or of a single value. */
export function toMatrix(argument: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(argument)) return [[argument]];
  return argument.length > 0 && Array.isArray(argument[0]) ? argument : [argument];
}

/** What is told of a cell that cannot be read as a number. */
export function notANumber(name: string, cell: string | boolean | number | typeof strange): string {
  if (typeof cell === "string") return `${name} "${cell}" is text: type it as a number`;
  return cell === strange
    ? `${name} is neither a number nor a text: type it as a number`
    : `${name} ${String(cell)} is not a number`;
}
