import { writeFileSync } from "node:fs";
import { generateMetadata, metadataFile } from "./generate";

writeFileSync(metadataFile, await generateMetadata());
