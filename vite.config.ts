import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { parse } from "yaml";

/** Reads an imported YAML file at build time; the page gets it as plain JSON. */
function yamlDocuments(): Plugin {
  return {
    name: "yaml-documents",
    transform: (text, id) => (id.endsWith(".yaml") ? `export default ${JSON.stringify(parse(text))};` : null),
  };
}

/**
 * The page as an app: everything is put on the device at the first visit. A newer version waits until it is asked for or
 * all windows are closed, so that no page loses its files under it.
 */
const offline = VitePWA({
  filename: "sw.js",
  registerType: "prompt",
  // The page registers it itself, to say how it stands.
  injectRegister: false,
  manifest: {
    id: "./",
    name: "Hardstand",
    short_name: "Hardstand",
    description: "What spray water does to each active in the tank and on the leaf, and the way out.",
    lang: "en-GB",
    start_url: "./",
    scope: "./",
    display: "standalone",
    background_color: "#fbfaf6",
    theme_color: "#14202b",
    icons: [
      { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
      { src: "icon-192.png", sizes: "192x192", type: "image/png" },
      { src: "icon-512.png", sizes: "512x512", type: "image/png" },
      { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  },
  workbox: {
    globPatterns: ["**/*.{html,js,css,svg,png}"],
    maximumFileSizeToCacheInBytes: 4_000_000,
    cleanupOutdatedCaches: true,
    // One file: a newer one never meets the helper of an older one.
    inlineWorkboxRuntime: true,
  },
});

/** The page: everything it needs is in its own folder, addressed relatively, so that it works from any path. */
export default defineConfig({
  root: fileURLToPath(new URL("src/web", import.meta.url)),
  base: "./",
  plugins: [react(), yamlDocuments(), offline],
  worker: { format: "es" },
  build: {
    outDir: fileURLToPath(new URL("dist/web", import.meta.url)),
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 2000,
  },
  server: { host: "127.0.0.1", port: 4173 },
});
