/** Where the site is served while it is being developed: every address in the sources begins so. */
export const developmentAddress = "https://localhost:3443/";

/** An address that cannot serve the site; the message says what to give instead. */
export class AddressError extends Error {}

/**
 * The https address of a folder, ending in a slash, as the manifest needs it.
 * Throws `AddressError` for anything else.
 */
export function folderAddress(text: string): string {
  const example =
    "give the https address of the site's folder, such as https://fans.example.org/fanrow/";
  const given = text.trim();
  if (given === "") throw new AddressError(`no address: ${example}`);
  if (!URL.canParse(given)) throw new AddressError(`"${given}" is not an address: ${example}`);
  const url = new URL(given);
  if (url.protocol !== "https:")
    throw new AddressError(
      `"${given}" begins with ${url.protocol}// where Excel loads add-ins over https only: ${example}`,
    );
  if (!/^https:\/\//i.test(given)) throw new AddressError(`"${given}" lacks a //: ${example}`);
  if (url.username || url.password)
    throw new AddressError(`"${given}" holds a user name or a password: ${example}`);
  if (url.search || url.hash || /[?#]/.test(given))
    throw new AddressError(`"${given}" holds a ? or a #, which no folder has: ${example}`);
  const last = url.pathname.split("/").at(-1) ?? "";
  if (/\.[a-z]+$/i.test(last)) throw new AddressError(`"${given}" is a file: ${example}`);
  return url.pathname.endsWith("/") ? url.href : `${url.href}/`;
}
