import { execFileSync, spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { afterAll, describe, expect, it } from "vitest";
import { SafeFile, writeFileSafely } from "../../src/command/output";
import { whole } from "../setup/whole";

const folder = mkdtempSync(join(tmpdir(), "fanrow-safe-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let made = 0;

/** A folder of its own with a source and an older target in it. */
function place() {
  const own = join(folder, `${made++}`);
  mkdirSync(own);
  const [source, target] = [join(own, "job.xlsx"), join(own, "out.xlsx")];
  writeFileSync(source, "the source");
  writeFileSync(target, "the old target");
  return { own, source, target, replacing: { sources: [source], replace: true } };
}

const writing = (target: string, sources: readonly string[], replace = true) =>
  writeFileSafely(target, "new", { sources, replace });

describe("A file that is read", () => {
  it("is never written over, whatever name it is given by", async () => {
    const { own, source } = place();
    symlinkSync(source, join(own, "link.xlsx"));
    linkSync(source, join(own, "hard.xlsx"));
    symlinkSync(own, join(folder, "elsewhere"));
    for (const name of [source, join(own, "link.xlsx"), join(own, "hard.xlsx")])
      await expect(writing(name, [source])).rejects.toThrow("is the same file as");
    await expect(writing(join(folder, "elsewhere", "job.xlsx"), [source])).rejects.toThrow(
      "give another name",
    );
    expect(readFileSync(source, "utf8")).toBe("the source");
  });
});

describe("A target that is there already", () => {
  it("is refused without leave to replace it, and replaced whole with it", async () => {
    const { target, source } = place();
    await expect(writing(target, [source], false)).rejects.toThrow("add --replace");
    expect(readFileSync(target, "utf8")).toBe("the old target");
    await writing(target, [source]);
    expect(readFileSync(target, "utf8")).toBe("new");
  });

  it("keeps its permissions, and a link to it stays a link", async () => {
    const { own, target, source } = place();
    chmodSync(target, 0o640);
    symlinkSync("out.xlsx", join(own, "link.xlsx"));
    await writing(join(own, "link.xlsx"), [source]);
    expect(readFileSync(target, "utf8")).toBe("new");
    expect(statSync(target).mode & 0o777).toBe(0o640);
  });

  it("is refused where it is a folder or a device", async () => {
    const { own } = place();
    await expect(writing(own, [])).rejects.toThrow("is no plain file");
    await expect(writing("/dev/full", [])).rejects.toThrow("is no plain file");
  });
});

describe("A write that fails", () => {
  it("says that the folder is missing, and makes none", async () => {
    await expect(writing(join(folder, "none", "out.xlsx"), [])).rejects.toThrow(
      "there is no such folder",
    );
  });

  it("leaves the old file and nothing beside it when it is given up", async () => {
    const { own, target, replacing } = place();
    const file = await SafeFile.begin(target, replacing);
    await file.write("half of a new");
    await file.abandon();
    expect(readFileSync(target, "utf8")).toBe("the old target");
    expect(readdirSync(own).sort()).toEqual(["job.xlsx", "out.xlsx"]);
  });

  it("leaves source and old target whole when the system lets no more be written", () => {
    const { own, target } = place();
    const script = `ulimit -f 8; exec "$0" "$@"`;
    const said = failing("sh", ["-c", script, process.execPath, writer, target, "1000000", "once"]);
    expect(said).toContain("cannot be written");
    expectOld(own, target);
  });

  it.runIf(mayMount())("leaves both whole on a full disk and on one that is read-only", () => {
    const { own, target } = place();
    const run = (options: string, size: number) => {
      const script = `mkdir -p "$0/disk" && mount -t tmpfs -o size=64k none "$0/disk" &&
        cp "$0/out.xlsx" "$0/disk/" && mount -o remount,${options} "$0/disk" || exit 9
        "$1" "$2" "$0/disk/out.xlsx" ${size} once 2>&1; cat "$0/disk/out.xlsx"; ls -A "$0/disk"`;
      const args = ["-r", "-m", "sh", "-c", script, own, process.execPath, writer];
      return execFileSync("unshare", args, { encoding: "utf8" });
    };
    expect(run("rw", 10)).toBe("ready\naaaaaaaaaaout.xlsx\n");
    expect(run("rw", 1_000_000)).toMatch(/the disk is full.*\n?the old targetout\.xlsx\n$/s);
    expect(run("ro", 10)).toMatch(/the disk is read-only.*\n?the old targetout\.xlsx\n$/s);
    expectOld(own, target, ["disk"]);
  });
});

describe("Two writers of one file", () => {
  it("without leave to replace: the first is kept and the second told", async () => {
    const { own } = place();
    const target = join(own, "fresh.xlsx");
    const guard = { sources: [], replace: false };
    const [one, two] = [await SafeFile.begin(target, guard), await SafeFile.begin(target, guard)];
    await one.write("one");
    await two.write("two");
    await two.commit();
    await expect(one.commit()).rejects.toThrow("was written by another");
    expect(readFileSync(target, "utf8")).toBe("two");
    expect(readdirSync(own).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it("with leave to replace: the file is one or the other, whole", async () => {
    const { target, replacing } = place();
    const texts = ["a", "b", "c", "d"].map((letter) => letter.repeat(300_000));
    for (let round = 0; round < 10; round++) {
      await Promise.all(texts.map((text) => writeFileSafely(target, text, replacing)));
      expect(texts.includes(readFileSync(target, "utf8"))).toBe(true);
    }
  });
});

/** A program that says it is ready, then writes a file of one letter again and again. */
const writer = join(folder, "writer.mjs");
buildSync({
  stdin: {
    contents: `
      import { writeFileSafely } from "./src/command/output";
      const [target, size, often] = process.argv.slice(2);
      process.stdout.write("ready\\n");
      try {
        for (let i = 0; i < (often === "once" ? 1 : 1e9); i++)
          await writeFileSafely(target, String.fromCharCode(97 + (i % 26)).repeat(Number(size)),
            { sources: [], replace: true });
      } catch (error) { process.stderr.write(error.message + "\\n"); process.exitCode = 2; }`,
    resolveDir: join(import.meta.dirname, "../.."),
    loader: "ts",
  },
  outfile: writer,
  bundle: true,
  platform: "node",
  format: "esm",
});

describe("A writer that is killed", () => {
  const kills = whole ? 1_000 : 25;

  it(`leaves the target whole every time, in ${kills} kills at random`, async () => {
    const { own, source, target } = place();
    const size = 400_000;
    let replaced = 0;
    for (let i = 0; i < kills; i++) {
      await killed(target, size, Math.random() * 40);
      const text = readFileSync(target, "utf8");
      if (text === "the old target") continue;
      replaced++;
      expect(text.length).toBe(size);
      expect(text).toBe(text.charAt(0).repeat(size));
    }
    expect(replaced).toBeGreaterThan(kills / 3);
    expect(readFileSync(source, "utf8")).toBe("the source");
    // What the kills left beside it goes with a later write, an hour on.
    const left = () => readdirSync(own).filter((name) => name.endsWith(".part"));
    for (const name of left()) utimesSync(join(own, name), 0, 0);
    await writing(target, [source]);
    expect(left()).toEqual([]);
  }, 1_800_000);
});

function killed(target: string, size: number, after: number): Promise<void> {
  const child = spawn(process.execPath, [writer, target, `${size}`, "on"]);
  child.stdout.once("data", () => setTimeout(() => child.kill("SIGKILL"), after));
  return new Promise((done) => child.once("close", () => done()));
}

/** What a call that fails says on the error stream. */
function failing(command: string, args: string[]): string {
  try {
    execFileSync(command, args, { stdio: "pipe" });
  } catch (error) {
    return String((error as { stderr: Buffer }).stderr);
  }
  throw new Error("the call did not fail");
}

/** A disk of one's own: Linux lets a namespace of one's own mount it. */
function mayMount(): boolean {
  return spawnSync("unshare", ["-r", "-m", "mount", "-t", "tmpfs", "none", folder]).status === 0;
}

function expectOld(own: string, target: string, also: readonly string[] = []): void {
  expect(readFileSync(target, "utf8")).toBe("the old target");
  expect(readFileSync(join(own, "job.xlsx"), "utf8")).toBe("the source");
  expect(readdirSync(own).sort()).toEqual([...also, "job.xlsx", "out.xlsx"].sort());
}
