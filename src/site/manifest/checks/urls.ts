import { longest } from "../facts";
import type { Check } from "../finding";
import { type Element, label, within } from "../xml";

const urlElements = new Set([
  "IconUrl",
  "HighResolutionIconUrl",
  "SupportUrl",
  "SourceLocation",
  "Image",
  "Url",
  "AppDomain",
]);

/**
 * Excel keeps functions.js and functions.json for up to a day: their URLs carry the version, so that a new
 * one is fetched at once.
 */
export const versionedUrls: Check = ({ root }) => {
  const version = [...within(root)].find((each) => each.name === "Version")?.text.trim() ?? "";
  return [...within(root)].flatMap((element) => {
    const url = element.name === "Url" ? (element.attributes.get("DefaultValue") ?? "") : "";
    const isOld = /\/functions\.js(on)?(\?|$)/.test(url) && !url.endsWith(`?v=${version}`);
    return isOld
      ? [`${label(element)}: ${url} does not name the version; end it with ?v=${version}`]
      : [];
  });
};

/** Every URL is https, begins with the site's address and names a file that was built. */
export const urls: Check = ({ root, address, builtFiles }) => {
  const found: string[] = [];
  for (const element of within(root)) {
    if (!urlElements.has(element.name)) continue;
    for (const url of urlsOf(element)) {
      const name = `${label(element)}: ${url}`;
      if (!URL.canParse(url)) found.push(`${name} is not a URL; write it in full`);
      else if (new URL(url).protocol !== "https:")
        found.push(`${name} is not https; Office refuses it, write https://`);
      else if (element.name === "AppDomain") continue;
      else if (url.length > longest.url)
        found.push(`${name} is longer than ${longest.url} characters; shorten it`);
      else if (!url.startsWith(address))
        found.push(`${name} lies outside ${address}; serve the file from there`);
      else if (!builtFiles.has(fileOf(url, address)))
        found.push(`${name} has no built file; build ${fileOf(url, address)} or mend the URL`);
    }
  }
  return found;
};

function urlsOf(element: Element): string[] {
  const values = [
    element.attributes.get("DefaultValue"),
    ...element.children.map((child) => child.attributes.get("Value")),
    element.name === "AppDomain" ? element.text.trim() : undefined,
  ];
  return values.filter((value) => value !== undefined);
}

function fileOf(url: string, address: string): string {
  return url.slice(address.length).replace(/[?#].*$/, "");
}
