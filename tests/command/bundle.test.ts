import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";

const folder = mkdtempSync(join(tmpdir(), "fanrow-alone-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

import { licenceNotices } from "../../src/licences/index.mjs";

describe("The packed command", () => {
  it("checks a workbook in a folder where no package is installed", async () => {
    const launcher = "../../src/command/bundle.mjs";
    const { bundleCommand } = (await import(launcher)) as {
      bundleCommand: (outfile: string) => Promise<{ inputs: Record<string, unknown> }>;
    };
    const program = join(folder, "fanrow.mjs");
    const { inputs } = await bundleCommand(program);
    const notices = licenceNotices(Object.keys(inputs));
    for (const name of ["cli-table3", "saxes", "fflate"]) expect(notices).toContain(`\n${name} `);
    copyFileSync("workbooks/quarry-yard.xlsx", join(folder, "job.xlsx"));
    const printed = execFileSync(
      process.execPath,
      [program, "--json", "--report-only", "job.xlsx"],
      {
        cwd: folder,
        encoding: "utf8",
      },
    );
    expect(JSON.parse(printed).files[0].summary.fans).toBeGreaterThan(0);
  });
});
