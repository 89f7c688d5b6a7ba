import { type Chunks, paneChunks } from "./chunks";

/** Two copies of these do not know of each other, and hooks fail. */
const single = ["react", "react-dom", "scheduler"];
/** Too heavy to wait for before the first screen. */
const late = ["@observablehq/plot", "ag-grid-community"];

/**
 * Looks for packages where they should not be: twice in the site, or in what the pane fetches
 * first. `modules` are the source modules of each built file. An empty list is well.
 */
export function checkPackages(
  chunks: Chunks,
  modules: ReadonlyMap<string, readonly string[]>,
): string[] {
  const { first } = paneChunks(chunks);
  const twice = single.flatMap((name) => {
    const folders = [...new Set([...modules.values()].flat().flatMap((id) => folderOf(id, name)))];
    return folders.length > 1
      ? [`${name} is in the site ${folders.length} times: ${folders.join(", ")}; keep one version`]
      : [];
  });
  const early = late.flatMap((name) =>
    [...first]
      .filter((file) => modules.get(file)?.some((id) => folderOf(id, name).length > 0))
      .map((file) => `${name} is in ${file}, which the pane fetches first; import it lazily`),
  );
  return [...twice, ...early];
}

/** The folder of the package that a module belongs to, where it is the named one. */
function folderOf(module: string, name: string): string[] {
  const path = module.replaceAll("\\", "/");
  const mark = `/node_modules/${name}/`;
  const at = path.lastIndexOf("/node_modules/");
  return path.startsWith(mark, at) ? [path.slice(0, at + mark.length)] : [];
}
