import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { generateMetadata } from "../../../functions/metadata/index.mjs";
import { AddressError, folderAddress } from "./address";
import { readdress } from "./readdress";
import { notServed } from "./served";

/** What to do differently; shown as it stands, without a trace. */
export class SiteError extends Error {}

/**
 * Rewrites the manifest and the help addresses of a built site for the address it will be served
 * at. `source` is the folder of manifest.xml, `site` the built one. Nothing is written unless all of it is sound. Returns the files written.
 */
export async function writeReaddressed(
  address: string,
  source: string,
  site: string,
): Promise<string[]> {
  const folder = folderAddress(address);
  if (!existsSync(join(site, "pane.html")))
    throw new SiteError(`${site} holds no built site: run npm run build first`);
  const own = readFileSync(join(source, "manifest.xml"), "utf8");
  const manifest = readdress(own, folder, "xml");
  const metadata = readdress(await generateMetadata(), folder, "json");
  const built = readdirSync(site, { recursive: true, encoding: "utf8" });
  const files = built.map((file) => file.replaceAll("\\", "/"));
  const findings = notServed(own, files);
  if (findings.length > 0)
    throw new SiteError(`manifest.xml does not do for ${folder}:\n${findings.join("\n")}`);
  const written = [
    [join(site, "manifest.xml"), manifest],
    [join(site, "functions.json"), metadata],
  ] as const;
  for (const [file, text] of written) writeFileSync(file, text);
  return written.map(([file]) => file);
}

/** The command line: one address. Returns what to print and the exit code. */
export async function command(
  args: readonly string[],
  source: string,
  site: string,
): Promise<{ readonly say: string; readonly code: 0 | 1 }> {
  try {
    if (args.length > 1) throw new AddressError(`${args.length} addresses given: give one`);
    const files = await writeReaddressed(args[0] ?? "", source, site);
    return { say: `Written: ${files.join(", ")}`, code: 0 };
  } catch (error) {
    if (error instanceof AddressError || error instanceof SiteError)
      return { say: error.message, code: 1 };
    throw error;
  }
}
