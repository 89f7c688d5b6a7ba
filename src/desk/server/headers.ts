const policy = [
  "default-src 'self'",
  "script-src 'self'",
  // The grid and the controls write their styles into the page.
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** Headers of every answer. */
export const securityHeaders: Readonly<Record<string, string>> = {
  "Content-Security-Policy": policy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
};

/** How long an answer may be kept: files with a hash in their name for good, pages and data never. */
export function cachingOf(path: string): string {
  if (/\/assets\/.*-[\w-]{8}\.\w+$/.test(path)) return "public, max-age=31536000, immutable";
  return /\.(html|json)$|\/$/.test(path) ? "no-store" : "no-cache";
}
