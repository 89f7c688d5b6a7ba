import { readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { actionNames, type CommandEvent } from "../../src/site/pages/actions";
import { openPane, type PageOffice } from "../../src/site/pages/open-pane";
import { committed } from "./manifest/committed";
import { named, parseXml } from "./manifest/xml";

/** A page with an Excel around it; what happens is written down in order. */
function page({ host = "Excel" as string | null, isRecent = true, mount = async () => {} } = {}) {
  const happened: string[] = [];
  const commands = new Map<string, (event: CommandEvent) => Promise<void>>();
  const listener = new EventTarget();
  for (const name of ["fanrow:check", "fanrow:show"])
    listener.addEventListener(name, (event) =>
      happened.push([name, (event as CustomEvent).detail?.screen].filter(Boolean).join(" ")),
    );
  const office: PageOffice = {
    actions: { associate: (name, run) => commands.set(name, run) },
    addin: {
      showAsTaskpane: async () => {
        happened.push("shown");
      },
    },
    onReady: async () => ({ host }),
    context: { requirements: { isSetSupported: () => isRecent } },
  };
  const mounting = async () => {
    await mount();
    happened.push("mounted");
  };
  return {
    happened,
    commands,
    open: () => openPane({ office, listener, mount: mounting }),
    run: (name: string) =>
      commands.get(name)?.({ completed: () => happened.push("completed") }) ?? Promise.reject(),
  };
}

describe("the pane's page", () => {
  it("mounts the pane in Excel", async () => {
    const { open, happened } = page();
    expect(await open()).toBe("pane");
    expect(happened).toEqual(["mounted"]);
  });

  it("says what it is in a browser by itself, with office.js and without, and fetches no pane", async () => {
    const { open, happened } = page({ host: null });
    expect(await open()).toBe("elsewhere");
    const mount = () => Promise.reject(new Error("fetched"));
    expect(await openPane({ office: undefined, listener: new EventTarget(), mount })).toBe(
      "elsewhere",
    );
    expect(happened).toEqual([]);
  });

  it("says that Excel is too old for the pane, where it is", async () => {
    expect(await page({ isRecent: false }).open()).toBe("too-old");
  });

  it("says that the pane did not open, where its code does not arrive", async () => {
    const mount = () => Promise.reject(new TypeError("failed to fetch"));
    expect(await page({ mount }).open()).toBe("failed");
  });
});

describe("the commands of the ribbon and the cell menu", () => {
  it("are all given to Office, and no others, before the pane's code is asked for", () => {
    const { open, commands } = page({ mount: () => new Promise(() => {}) });
    void open();
    const asked = named(parseXml(committed), "FunctionName").map(({ text }) => text);
    expect([...commands.keys()].sort()).toEqual(asked.sort());
    expect([...actionNames].sort()).toEqual(asked);
  });

  it.each([
    ["checkWorkbook", "fanrow:check"],
    ["showRates", "fanrow:show rates"],
  ])("%s shows the pane and tells it %s", async (name, told) => {
    const { open, run, happened } = page();
    await open();
    await run(name);
    expect(happened).toEqual(["mounted", "shown", told, "completed"]);
  });

  it("wait for a pane that is still on its way", async () => {
    let arrive = () => {};
    const { open, run, happened } = page({ mount: () => new Promise((done) => (arrive = done)) });
    const opened = open();
    const done = run("checkWorkbook");
    // Long enough for everything that does not wait for the pane.
    await new Promise((later) => setTimeout(later));
    expect(happened).toEqual(["shown"]);
    arrive();
    await Promise.all([opened, done]);
    expect(happened).toEqual(["shown", "mounted", "fanrow:check", "completed"]);
  });

  it("end all the same where no pane comes, so that Excel does not wait", async () => {
    const { open, run, happened } = page({ isRecent: false });
    await open();
    await run("checkWorkbook");
    expect(happened).toEqual(["shown", "completed"]);
  });
});

describe("a web view that cannot run the pane's modules", () => {
  /** What the script does to the page in a view with or without modules. */
  function shown(page: string, hasModules: boolean): { told: string; hidden: string[] } {
    const html = readFileSync(new URL(`../../src/site/pages/${page}`, import.meta.url), "utf8");
    const hidden = new Set(["old-view"]);
    let told = "";
    const element = (id: string) => {
      if (!html.includes(`id="${id}"`)) throw new Error(`${page} has no ${id}`);
      return {
        getAttribute: () => /data-for="([^"]*)"/.exec(html)?.[1],
        setAttribute: () => hidden.add(id),
        removeAttribute: () => hidden.delete(id),
        appendChild: (text: string) => {
          told += text;
        },
      };
    };
    const document = {
      createElement: () => (hasModules ? { noModule: false } : {}),
      createTextNode: (text: string) => text,
      getElementById: element,
    };
    const script = new URL("../../src/site/pages/old-view.js", import.meta.url);
    runInNewContext(readFileSync(script, "utf8"), { document });
    return { told, hidden: [...hidden] };
  }

  it.each([
    ["pane.html", "pane"],
    ["desk.html", "desk-root"],
  ])("is told what it lacks by %s, in place of its content", (page, content) => {
    expect(shown(page, false)).toEqual({ told: "script modules", hidden: [content] });
    expect(shown(page, true)).toEqual({ told: "", hidden: ["old-view"] });
  });
});
