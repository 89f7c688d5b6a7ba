import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Workbook } from "../../src/workbook";

/**
 * Workbooks as LibreOffice recalculates them, every formula anew and no stored value believed; all
 * in one run, since the start is what takes time.
 */
export function recalculated(
  files: Readonly<Record<string, Uint8Array>>,
): Record<string, Workbook> {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-plain-"));
  try {
    const profile = join(folder, "profile");
    mkdirSync(join(profile, "user"), { recursive: true });
    mkdirSync(join(folder, "out"));
    // 0: always recalculate on load.
    writeFileSync(
      join(profile, "user", "registrymodifications.xcu"),
      `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`,
    );
    const names = Object.keys(files);
    for (const name of names) writeFileSync(join(folder, name), files[name] as Uint8Array);
    execFileSync(
      "soffice",
      [
        `-env:UserInstallation=${pathToFileURL(profile)}`,
        "--headless",
        "--convert-to",
        "xlsx:Calc MS Excel 2007 XML",
        "--outdir",
        join(folder, "out"),
        ...names.map((name) => join(folder, name)),
      ],
      { stdio: "pipe", timeout: 300_000 },
    );
    return Object.fromEntries(
      names.map((name) => [
        name,
        Workbook.open(new Uint8Array(readFileSync(join(folder, "out", name)))),
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
