import { join } from "node:path";
import { command } from "./write";

const root = join(import.meta.dirname, "../../..");
const { say, code } = await command(process.argv.slice(2), root, join(root, "dist"));
console[code === 0 ? "log" : "error"](say);
process.exitCode = code;
