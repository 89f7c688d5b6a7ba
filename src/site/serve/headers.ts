/**
 * Where Excel on the web may show the add-in in a frame. Microsoft publishes no list: these are
 * the hosts that open workbooks today.
 */
const officeHosts = [
  "https://*.officeapps.live.com",
  "https://onedrive.live.com",
  "https://*.sharepoint.com",
  "https://*.office.com",
  "https://*.microsoft365.com",
  "https://*.cloud.microsoft",
];

/** Scripts of our own, and Office's; pages that need less say so themselves. */
const policy = [
  `frame-ancestors 'self' ${officeHosts.join(" ")}`,
  "script-src 'self' https://appsforoffice.microsoft.com",
  "object-src 'none'",
  "base-uri 'self'",
].join("; ");

const hashed = /\/assets\/[^/]+-[\w-]{8}\.\w+$/;

/** The headers of the file at a path, for Excel. No X-Frame-Options: it would refuse every frame. */
export function headersFor(path: string): Readonly<Record<string, string>> {
  return {
    "Content-Security-Policy": policy,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cache-Control": hashed.test(path) ? "public, max-age=31536000, immutable" : "no-cache",
    // Excel on the web reads the list of functions from a page of its own.
    ...(path === "/functions.json" ? { "Access-Control-Allow-Origin": "*" } : {}),
  };
}
