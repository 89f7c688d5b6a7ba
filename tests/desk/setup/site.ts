import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { buildSite } from "../../../src/desk/server/build";
import { serveSite } from "../../../src/desk/server/server";
import { isStale } from "../../../src/serve";

declare module "vitest" {
  interface ProvidedContext {
    /** Address of the served site. */
    site: string;
    /** Folder of the built site. */
    built: string;
  }
}

const project = join(import.meta.dirname, "../../..");
const folder = join(project, "dist");

/** Serves the built site while the tests run; builds it where the sources are newer. */
export default async function setup(tests: TestProject): Promise<() => Promise<void>> {
  if (isStale(project, folder, "desk.html")) await buildSite(project, folder);
  const site = await serveSite({ folder });
  tests.provide("site", site.address);
  tests.provide("built", folder);
  return () => site.close();
}
