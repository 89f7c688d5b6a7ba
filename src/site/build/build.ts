import { build, type LogLevel } from "vite";
import { siteConfig } from "./config";

/** Builds the site into `folder` as it is served, whatever the environment says. */
export async function buildSite(folder: string, logLevel: LogLevel = "warn"): Promise<void> {
  const before = process.env.NODE_ENV;
  // Vite takes a name that is set already, and React under another name is its slow, large build.
  process.env.NODE_ENV = "production";
  try {
    await build({ ...siteConfig(folder), configFile: false, logLevel });
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
}
