import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { defined } from "../functions/metadata/index.mjs";

const root = `${import.meta.dirname}/..`;
const define = await defined();

/** One run of two projects, so that every core has work until the end. */
export default defineConfig({
  test: {
    root,
    maxWorkers: Math.max(2, availableParallelism()),
    projects: [
      {
        define,
        test: {
          name: "headless",
          root,
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/desk/**"],
          isolate: false,
          setupFiles: ["tests/setup/worksheet-functions.ts"],
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
      {
        define,
        test: {
          name: "desk",
          root,
          include: ["tests/desk/**/*.test.ts"],
          setupFiles: ["tests/setup/worksheet-functions.ts"],
          globalSetup: ["tests/desk/setup/site.ts"],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          // A page on a busy machine takes its time.
          expect: { poll: { timeout: 10_000 } },
        },
      },
    ],
  },
});
