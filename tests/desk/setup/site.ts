import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { buildSite } from "../../../src/desk/server/build";
import { serveSite } from "../../../src/desk/server/server";

declare module "vitest" {
  interface ProvidedContext {
    /** Address of the served site. */
    site: string;
    /** Folder of the built site. */
    built: string;
  }
}

const project = join(import.meta.dirname, "../../..");

/** Builds the site into a folder of its own and serves it while the tests run. */
export default async function setup(tests: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-desk-"));
  await buildSite(project, folder);
  const site = await serveSite({ folder });
  tests.provide("site", site.address);
  tests.provide("built", folder);
  return async () => {
    await site.close();
    rmSync(folder, { recursive: true, force: true });
  };
}
