import { HostRange } from "../host-range";
import { invalidArgument } from "./errors";
import type { Json } from "./messages";

/** An argument that is an object: what stands behind it. */
export class ObjectArgument {
  constructor(readonly self: unknown) {}
}

/** The arguments of a method call, each read with a check of its kind. Places count from 0. */
export class Arguments {
  constructor(private readonly values: readonly (Json | ObjectArgument | undefined)[]) {}

  /** The plain value at a place; null where it was left out. */
  json(at: number): Json {
    const value = this.values[at];
    if (value instanceof ObjectArgument)
      throw invalidArgument(`Argument ${at + 1} may not be an object.`);
    return value ?? null;
  }

  text(at: number, what: string): string {
    const value = this.json(at);
    if (typeof value !== "string") throw invalidArgument(`${what} must be a text.`);
    return value;
  }

  optionalText(at: number, what: string): string | null {
    return this.json(at) === null ? null : this.text(at, what);
  }

  flag(at: number): boolean {
    return this.json(at) === true;
  }

  integer(at: number, what: string): number {
    const value = this.json(at);
    if (typeof value !== "number" || !Number.isInteger(value))
      throw invalidArgument(`${what} must be a whole number.`);
    return value;
  }

  optionalInteger(at: number, what: string, otherwise: number): number {
    return this.json(at) === null ? otherwise : this.integer(at, what);
  }

  /** A range passed as an object; undefined for any other argument. */
  range(at: number): HostRange | undefined {
    const value = this.values[at];
    return value instanceof ObjectArgument && value.self instanceof HostRange
      ? value.self
      : undefined;
  }
}
