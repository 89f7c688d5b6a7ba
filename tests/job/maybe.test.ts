import { describe, expect, it } from "vitest";
import { InputError } from "../../src/cells";
import { UnknownNameError } from "../../src/editions";
import { attempt } from "../../src/job";

describe("attempt", () => {
  it("keeps what is wrong with what a user gave", () => {
    for (const problem of [new InputError("give 0 or more"), new UnknownNameError("unknown")])
      expect(
        attempt(() => {
          throw problem;
        }),
      ).toEqual({ problem });
  });

  it("throws a fault of the program on: it is never told as the user's mistake", () => {
    const fault = new TypeError("x is not a function");
    expect(() =>
      attempt(() => {
        throw fault;
      }),
    ).toThrow(fault);
  });
});
