import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import type { Plugin } from "vite";
import { parse } from "yaml";

/** Reads an imported YAML file at build time; the page gets it as plain JSON. */
function yamlDocuments(): Plugin {
  return {
    name: "yaml-documents",
    transform: (text, id) => (id.endsWith(".yaml") ? `export default ${JSON.stringify(parse(text))};` : null),
  };
}

/** The page: everything it needs is in its own folder, addressed relatively, so that it works from any path. */
export default defineConfig({
  root: fileURLToPath(new URL("src/web", import.meta.url)),
  base: "./",
  plugins: [react(), yamlDocuments()],
  worker: { format: "es" },
  build: {
    outDir: fileURLToPath(new URL("dist/web", import.meta.url)),
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 2000,
  },
  server: { host: "127.0.0.1", port: 4173 },
});
