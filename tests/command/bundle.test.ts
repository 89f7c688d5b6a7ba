import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";

const folder = mkdtempSync(join(tmpdir(), "fanrow-alone-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("The packed command", () => {
  it("checks a workbook in a folder where no package is installed", async () => {
    const launcher = "../../src/command/bundle.mjs";
    const { bundleCommand } = (await import(launcher)) as {
      bundleCommand: (outfile: string) => Promise<void>;
    };
    const program = join(folder, "fanrow.mjs");
    await bundleCommand(program);
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
