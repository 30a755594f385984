import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    globalSetup: ["tests/support/one-run.ts"],
    // Much of the time is spent waiting for browsers and child processes.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 600_000,
  },
});
