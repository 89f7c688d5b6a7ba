import { parseArgs } from "node:util";

interface ServeOptions {
  /** The port asked for; null takes the first free one. */
  readonly port: number | null;
  readonly opensBrowser: boolean;
  /** Workbooks to open, as paths. */
  readonly files: readonly string[];
}

export const usage = `usage: npm start -- [--port N] [--open] [workbook.xlsx …]
  Serves the desk on this machine alone and prints its address.
  --port N   this port instead of the first free one from 4710 up
  --open     opens the page in the browser
  --help     prints this`;

/** Raised for arguments that cannot be used; the message is for the user. */
export class UsageError extends Error {}

/** Reads the command line; null where help is asked for. */
export function readServeOptions(args: readonly string[]): ServeOptions | null {
  const { values, positionals } = parse(args);
  if (values.help) return null;
  return {
    port: values.port === undefined ? null : readPort(values.port),
    opensBrowser: values.open === true,
    files: positionals,
  };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        port: { type: "string" },
        open: { type: "boolean" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
}

function readPort(text: string): number {
  const port = Number(text);
  if (Number.isInteger(port) && port >= 1 && port <= 65_535) return port;
  throw new UsageError(`--port ${text}: give a whole number from 1 to 65535`);
}
