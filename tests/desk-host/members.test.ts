import { describe, expect, it } from "vitest";
import type { Served } from "../../src/desk/host/wire/served";
import { everyObject } from "./every-object";
import { installOffice } from "./install-office";

const objects = everyObject();

describe("The members served", () => {
  it.each([...objects])("of %s are all members of that class of the client library", (name) => {
    const { Excel } = installOffice();
    const type = (Excel as unknown as Record<string, { prototype: object } | undefined>)[name];
    const { members } = objects.get(name) as Served;
    const { values = {}, links = {}, methods = {} } = members;
    const offered = [values, links, methods].flatMap((table) => Object.keys(table));
    expect(type).toBeDefined();
    // A few the client calls by their name on the wire alone.
    const hidden = new Set(["_GetReferenceCount", "_RemoveAllReferences"]);
    const unknown = offered.filter(
      (member) => !hidden.has(member) && !(member in (type?.prototype ?? {})),
    );
    expect(unknown).toEqual([]);
  });
});
