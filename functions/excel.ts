import * as code from "./made";

// Excel loads this file beside functions.json and calls each function by its id.
declare const CustomFunctions: { associate(id: string, code: unknown): void };

for (const [id, own] of Object.entries(code)) CustomFunctions.associate(id, own);
