import { defineConfig } from "vitest/config";

const shared = { environment: "node" as const, testTimeout: 120_000, hookTimeout: 120_000 };
/** One worker for each processor: by itself Vitest leaves one of them free, which on two is half of them. */
const maxWorkers = "100%";

export default defineConfig({
  test: {
    projects: [
      // The files of one worker share what they import: most of them load the same data, which takes longer than they do.
      { test: { ...shared, maxWorkers, isolate: false, name: "unit", include: ["src/**/*.test.{ts,tsx}"] } },
      {
        test: {
          ...shared,
          maxWorkers,
          isolate: false,
          name: "checks",
          include: ["test/**/*.test.ts"],
          exclude: ["test/e2e/**", "test/speed/**"],
        },
      },
      { test: { ...shared, name: "browser", include: ["test/e2e/**/*.test.ts"], maxWorkers: 2 } },
      // Times of the page, with nothing else at work.
      { test: { ...shared, name: "speed", include: ["test/speed/**/*.test.ts"], maxWorkers: 1 } },
    ],
  },
});
