import { implementations } from "./implementations";

// Excel loads this file beside functions.json and calls each function by its id.
declare const CustomFunctions: { associate(id: string, code: unknown): void };

for (const [id, code] of Object.entries(implementations)) CustomFunctions.associate(id, code);
