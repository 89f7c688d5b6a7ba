import type { Plugin } from "vite";

/**
 * Takes the addresses of the help pages out of the metadata that a page carries: no page follows
 * them, and an address may stand only where `npm run manifest` can change it.
 */
export function withoutHelpAddresses(): Plugin {
  return {
    name: "fanrow-help-addresses",
    apply: "build",
    enforce: "pre",
    transform(code, id) {
      if (!id.endsWith("functions/functions.json")) return null;
      const { functions } = JSON.parse(code) as { functions: Record<string, unknown>[] };
      const bare = functions.map(({ helpUrl: _, ...rest }) => rest);
      return { code: JSON.stringify({ functions: bare }), map: null };
    },
  };
}
