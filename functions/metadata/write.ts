import { writeFileSync } from "node:fs";
import { generateMetadata, metadataFile, releasedIds } from "./generate";
import { listTexts } from "./lists";

writeFileSync(metadataFile, await generateMetadata());
for (const [file, text] of listTexts(releasedIds())) writeFileSync(file, text);
