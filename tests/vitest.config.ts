import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: `${import.meta.dirname}/..`,
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/desk/**"],
    setupFiles: ["tests/setup/formula-trees.ts"],
    testTimeout: 120_000,
    hookTimeout: 180_000,
  },
});
