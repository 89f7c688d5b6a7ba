import { developmentAddress } from "./address";

/**
 * What the committed manifest asks of a built site and does not get there: a file, or the version in
 * the URLs of the functions, which Excel otherwise keeps for up to a day. Empty where all is there.
 */
export function notServed(manifest: string, builtFiles: readonly string[]): string[] {
  const version = /<Version>(.*)<\/Version>/.exec(manifest)?.[1];
  const urls = manifest.split(`"${developmentAddress}`).slice(1);
  return urls.flatMap((rest) => {
    const url = rest.slice(0, rest.indexOf('"'));
    const [file = "", query] = url.split("?");
    if (!builtFiles.includes(file)) return [`${url} has no built file: build it or mend the URL`];
    return /^functions\.js(on)?$/.test(file) && query !== `v=${version}`
      ? [`${url} does not name the version: end it with ?v=${version}`]
      : [];
  });
}
