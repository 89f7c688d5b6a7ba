/**
 * The static site that Excel loads: the pane and its page, functions.js and its metadata,
 * icons, one help page a function, the checker of the manifest, and the server that brings all this
 * to an Excel on the same machine. Only what is in `pages` runs in a browser.
 */
export { type BundleSizes, bundleGoals, bundleSizes } from "./build/bundle-sizes";

export { helpOf, helpPages } from "./help/page";
export { AddressError, developmentAddress, folderAddress } from "./manifest/address";
export { type CheckOptions, checkManifest } from "./manifest/check";
export { readdress } from "./manifest/readdress";
