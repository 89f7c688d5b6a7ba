import { readFileSync } from "node:fs";
import { join } from "node:path";

const site = join(import.meta.dirname, "..");

/** Sizes, px, of the icons committed beside their drawings. */
export const iconSizes: readonly number[] = [16, 32, 64, 80, 128];

export const iconFile = (size: number): string => `icons/icon-${size}.png`;

export const readIcon = (size: number): Buffer => readFileSync(join(site, iconFile(size)));

export const readStyle = (): string => readFileSync(join(site, "html/site.css"), "utf8");

/** The script that tells of an old web view; it goes out as it is written. */
export const readOldView = (): string => readFileSync(join(site, "pages/old-view.js"), "utf8");

/** The committed manifest, for the development address. */
export const readManifest = (): string => readFileSync(join(site, "../../manifest.xml"), "utf8");
