import { writeFileSync } from "node:fs";
import { released } from "./index.mjs";
import { listTexts } from "./lists";

for (const [file, text] of listTexts([...released().keys()])) writeFileSync(file, text);
