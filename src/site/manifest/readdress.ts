import { developmentAddress, folderAddress } from "./address";

/**
 * The manifest or functions.json for a site served at `address` instead of the development
 * address. Throws `AddressError` where the address will not do.
 */
export function readdress(text: string, address: string, kind: "xml" | "json"): string {
  const folder = folderAddress(address);
  // An address may hold & or ', which end neither a JSON string nor a URL, but do matter in XML.
  const written =
    kind === "xml" ? folder.replaceAll("&", "&amp;").replaceAll("'", "&apos;") : folder;
  return text.replaceAll(developmentAddress, () => written);
}
