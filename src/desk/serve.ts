import { spawn } from "node:child_process";
import { join } from "node:path";
import { isStale } from "../serve";
import { buildSite } from "./server/build";
import { giveFiles } from "./server/given-files";
import { readServeOptions, UsageError, usage } from "./server/options";
import { serveSite } from "./server/server";

const project = join(import.meta.dirname, "../..");
const built = join(project, "dist");

try {
  const options = readServeOptions(process.argv.slice(2));
  if (options === null) console.log(usage);
  else {
    const given = giveFiles(options.files);
    if (isStale(project, built, "desk.html")) {
      console.log("Building the site; this takes some seconds …");
      await buildSite(project, built);
    }
    const site = await serveSite({ folder: built, port: options.port, given });
    const page = `${site.address}desk.html`;
    const pages = given.map(({ name, token }) => ({ name, address: `${page}#given=${token}` }));
    if (pages.length === 0) console.log(`The desk, with the demo job: ${page}`);
    for (const { name, address } of pages) console.log(`The desk, with ${name}: ${address}`);
    console.log("Ctrl+C ends it.");
    if (options.opensBrowser) openBrowser(pages[0]?.address ?? page);
    for (const signal of ["SIGINT", "SIGTERM"] as const)
      process.once(signal, () => void site.close().then(() => process.exit(0)));
  }
} catch (error) {
  const message = error instanceof Error ? error.message : String(error);
  console.error(error instanceof UsageError ? `${message}\n${usage}` : message);
  process.exitCode = 1;
}

function openBrowser(address: string): void {
  const [command, ...args] =
    process.platform === "darwin"
      ? ["open", address]
      : process.platform === "win32"
        ? ["explorer", address]
        : ["xdg-open", address];
  const child = spawn(command as string, args, { stdio: "ignore", detached: true });
  child.once("error", () => console.log(`No browser could be opened: open ${address} by hand.`));
  child.unref();
}
