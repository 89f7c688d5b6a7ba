import { defineConfig } from "vitest/config";

/** The browser tests: one built site, one browser at a time. */
export default defineConfig({
  test: {
    root: `${import.meta.dirname}/../..`,
    include: ["tests/desk/**/*.test.ts"],
    globalSetup: ["tests/desk/setup/site.ts"],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
