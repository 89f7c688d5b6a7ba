import { setFlagsFromString } from "node:v8";
import { visible } from "../cells";
import { writeErrorOf } from "./output";
import { run } from "./run";

// A run is over in seconds, too soon for much inlining of functions to pay: without this limit a
// large job takes about a quarter more processor time.
setFlagsFromString("--max-inlined-bytecode-size-cumulative=100");

/** Resolves when the text is with the system; a stream that fails says so here and nowhere else. */
function printer(stream: NodeJS.WriteStream): (text: string) => Promise<void> {
  stream.on("error", () => {});
  return (text) =>
    new Promise((resolve, reject) =>
      stream.write(text, (error) => (error ? reject(error) : resolve())),
    );
}

const print = printer(process.stdout);
const printNote = printer(process.stderr);
const note = (text: string) => void printNote(text).catch(() => {});

async function main(): Promise<void> {
  process.exitCode = await run(process.argv.slice(2), {
    out: async (text) => {
      await print(text).catch((error: NodeJS.ErrnoException) => {
        // A reader such as head may close the pipe before everything is printed.
        if (error.code === "EPIPE") process.exit(2);
        throw writeErrorOf("standard output", error);
      });
    },
    note,
    width: process.stdout.columns ?? 110,
    isTerminal: process.stderr.isTTY === true,
    colour: process.stdout.isTTY === true && !process.env.NO_COLOR,
    today: new Date(),
  });
}

main().catch((error) => {
  // A fault of ours: one line, and never the status that means "something found".
  note(`The command failed (${visible(String(error))}). Nothing was changed; please report it.\n`);
  process.exitCode = 2;
});
