import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { files } from "./files";

// Writes the committed workbooks; a test proves that they are what this writes.
for (const [name, content] of Object.entries(files()))
  writeFileSync(join(import.meta.dirname, name), content);
