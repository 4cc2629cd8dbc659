import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

/**
 * The bundles for Node, one file each: `--mode cli` and `--mode server`. Packages and data are bundled in, which
 * makes the start several times faster than reading them one by one. The reader of PDFs alone is a file of its own,
 * as large as all the rest, and read only when there is a PDF.
 */
export default defineConfig(({ mode }) => ({
  root: fileURLToPath(new URL(".", import.meta.url)),
  publicDir: false,
  ssr: { noExternal: true, target: "node" },
  build: {
    ssr: `src/${mode}/main.ts`,
    outDir: `dist/${mode}`,
    emptyOutDir: true,
    target: "node20",
    minify: false,
    rolldownOptions: {
      output: { entryFileNames: "main.js", chunkFileNames: "[name].js", codeSplitting: true },
    },
  },
}));
