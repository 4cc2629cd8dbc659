import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** The page: everything it needs is in its own folder, addressed relatively, so that it works from any path. */
export default defineConfig({
  root: fileURLToPath(new URL("src/web", import.meta.url)),
  base: "./",
  plugins: [react()],
  worker: { format: "es" },
  build: {
    outDir: fileURLToPath(new URL("dist/web", import.meta.url)),
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 2000,
  },
  server: { host: "127.0.0.1", port: 4173 },
});
