import { defineConfig } from "vitest/config";

const shared = { environment: "node" as const, testTimeout: 120_000, hookTimeout: 120_000 };

export default defineConfig({
  test: {
    projects: [
      { test: { ...shared, name: "unit", include: ["src/**/*.test.{ts,tsx}"] } },
      {
        test: {
          ...shared,
          name: "checks",
          include: ["test/**/*.test.ts"],
          exclude: ["test/e2e/**"],
        },
      },
      { test: { ...shared, name: "browser", include: ["test/e2e/**/*.test.ts"], fileParallelism: false } },
    ],
  },
});
