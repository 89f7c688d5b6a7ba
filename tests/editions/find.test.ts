import { describe, expect, it } from "vitest";
import { editions, findDuty, findEdition, findRoom, UnknownNameError } from "../../src/editions";

describe("finding an edition", () => {
  it.each(
    editions.flatMap((edition) =>
      [edition.id, edition.title, ...edition.aliases].map((name) => [name, edition.id]),
    ),
  )("takes %s for %s, in any case and with blanks around it", (name, id) => {
    for (const spelling of [name, name.toLowerCase(), name.toUpperCase(), `  ${name} `])
      expect(findEdition(spelling).id).toBe(id);
  });

  it.each([
    ["ASHRAE 62.2-2016", "62.2-2016"],
    ["ANSI/ASHRAE Standard 62.2-2019", "62.2-2019"],
    ["62.2_2010", "62.2-2010"],
    ["irc2021", "IRC-2021"],
  ])("takes %s for %s", (name, id) => {
    expect(findEdition(name).id).toBe(id);
  });

  it.each(["62.2", "62.2-2003", "IRC", "2021", ""])(
    "refuses %j and lists those most like it",
    (name) => {
      expect(() => findEdition(name)).toThrow(UnknownNameError);
      expect(() => findEdition(name)).toThrow(
        new RegExp(`unknown edition "${name}": use one of .*; =FANROW.EDITIONS\\(\\) lists all`),
      );
    },
  );

  it("lists the editions that are like an unknown name", () => {
    expect(() => findEdition("IRC 2003")).toThrow(
      "use one of IRC-2012, IRC-2015, IRC-2018, IRC-2021, IRC-2024;",
    );
  });

  it("leaves no name to two editions", () => {
    const names = editions.flatMap((edition) =>
      [edition.id, ...edition.aliases].map((name) => name.toLowerCase().replace(/[\s-]/g, "")),
    );
    const each = editions.map((edition) =>
      [edition.id, ...edition.aliases].map((name) => name.toLowerCase().replace(/[\s-]/g, "")),
    );
    expect(new Set(names).size).toBe(each.reduce((sum, list) => sum + new Set(list).size, 0));
  });
});

describe("finding a room kind", () => {
  it.each([
    ["Bathroom", "bathroom"],
    ["en-suite", "bathroom"],
    ["half bath", "toilet"],
    ["WC", "toilet"],
    ["Range Hood", "kitchen hood"],
    ["kitchen", "kitchen"],
    ["downdraft", "kitchen"],
    ["Laundry", "utility"],
  ])("takes %s for %s", (name, kind) => {
    expect(findRoom(name)).toBe(kind);
  });

  it("refuses a room it does not know and lists the known ones", () => {
    expect(() => findRoom("attic")).toThrow(
      'unknown room kind "attic": use one of bathroom, toilet, kitchen hood, kitchen, utility',
    );
  });
});

describe("finding a duty", () => {
  it.each([
    ["On demand", "on demand"],
    ["intermittent", "on demand"],
    ["Demand-controlled", "on demand"],
    ["CONTINUOUS", "continuous"],
  ])("takes %s for %s", (name, duty) => {
    expect(findDuty(name)).toBe(duty);
  });

  it("refuses a duty it does not know and lists the known ones", () => {
    expect(() => findDuty("sometimes")).toThrow(
      'unknown duty "sometimes": use one of on demand, continuous',
    );
  });
});
