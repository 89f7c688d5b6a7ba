// Notices of the packages whose code goes into what is built. Plain JavaScript, since the command's
// bundle is made before anything here reads TypeScript.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const licenceFile = /^(licen[cs]e|copying|notice)(\.(md|txt))?$/i;

/**
 * The notices of all packages that these files come from, by name: version, licence, its text.
 * Throws where a package states no licence at all.
 */
export function licenceNotices(files) {
  const folders = new Map(
    [...files].flatMap((file) => {
      const folder = packageFolder(file);
      return folder === null ? [] : [[folder, noticeOf(folder)]];
    }),
  );
  const notices = [...new Set(folders.values())].sort();
  return `Code of others that is part of this, with its licences.\n\n${notices.join(`\n${"-".repeat(78)}\n\n`)}`;
}

/** The folder of the package that a file belongs to; null for a file of ours. */
function packageFolder(file) {
  const path = file.replaceAll("\\", "/").replace(/^\0+/, "").split("?")[0];
  const at = path.lastIndexOf("node_modules/");
  if (at < 0) return null;
  const [first, second] = path.slice(at + "node_modules/".length).split("/");
  return join(path.slice(0, at), "node_modules", first, first.startsWith("@") ? second : "");
}

function noticeOf(folder) {
  const { name, version, license, licenses, author } = JSON.parse(
    readFileSync(join(folder, "package.json"), "utf8"),
  );
  const texts = readdirSync(folder)
    .filter((file) => licenceFile.test(file))
    .map((file) => readFileSync(join(folder, file), "utf8").trim());
  // Older packages list what they are under.
  const stated = license ?? licenses?.[0];
  const kind = typeof stated === "string" ? stated : stated?.type;
  if (texts.length === 0 && !kind) throw new Error(`${name} states no licence`);
  const by = typeof author === "string" ? author : (author?.name ?? "");
  const own =
    texts.length > 0 ? texts : [`The package brings no text of its licence. ${by}`.trim()];
  return `${[`${name} ${version} (${kind ?? "see below"})`, ...own].join("\n\n")}\n`;
}
