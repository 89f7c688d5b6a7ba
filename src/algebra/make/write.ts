import { writeFileSync } from "node:fs";
import { generateMade, madeFiles, madePath } from "./generate";

const made = generateMade();
for (const file of madeFiles) writeFileSync(madePath(file), made[file]);
