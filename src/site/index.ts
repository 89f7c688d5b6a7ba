/**
 * The static site that Excel loads: the page of the shared runtime, functions.js and its metadata,
 * icons, one help page a function, and the checker of the manifest. Runs at build time only.
 */
export { type Example, examples } from "./help/examples";
export { helpFile, helpPages } from "./help/page";
export { AddressError, developmentAddress, folderAddress } from "./manifest/address";
export { type CheckOptions, checkManifest } from "./manifest/check";
export { readdress } from "./manifest/readdress";
