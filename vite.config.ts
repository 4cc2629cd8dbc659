import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, normalizePath, runnerImport } from "vite";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { parse } from "yaml";
import { alignedTo, englishSide } from "./src/words/aligned.ts";
import type { LanguagePack } from "./src/words/language.ts";

/** Reads an imported YAML file at build time; the page gets it as plain JSON. */
function yamlDocuments(): Plugin {
  return {
    name: "yaml-documents",
    transform: (text, id) => (id.endsWith(".yaml") ? `export default ${JSON.stringify(parse(text))};` : null),
  };
}

const DATA = normalizePath(fileURLToPath(new URL("data", import.meta.url)));

/** Leaves out of the data what is written beside a figure for who looks after it: no program reads it. */
function withoutNotes(): Plugin {
  return {
    name: "without-notes",
    enforce: "pre",
    transform: (text, id) =>
      id.startsWith(`${DATA}/`) && id.endsWith(".json")
        ? JSON.stringify(JSON.parse(text, (key, value: unknown) => (key === "note" ? undefined : value)))
        : null,
  };
}

const WORDS = normalizePath(fileURLToPath(new URL("src/words", import.meta.url)));
const TRANSLATED = ["de", "fr", "es"] as const;
const ENGLISH_SIDE = "\0english-side";

/** The one pack that a language's module exports, by the name it is exported under. */
async function packOf(tag: string): Promise<readonly [string, LanguagePack]> {
  const path = `${WORDS}/${tag}/index.ts`;
  const { module } = await runnerImport<Record<string, LanguagePack>>(path, {
    configFile: false,
    logLevel: "error",
  });
  const [found] = Object.entries(module);
  if (found === undefined) throw new Error(`${path} holds no pack`);
  return found;
}

/**
 * Writes the English side of the packs once, in a file that the translated languages share: each then holds its
 * translations alone, in the same order. By its source every pack holds both sides, which is how people read and mend it.
 */
function englishOnce(): Plugin {
  let packs: Promise<ReadonlyMap<string, readonly [string, LanguagePack]>> | undefined;
  const read = (): NonNullable<typeof packs> =>
    (packs ??= Promise.all(TRANSLATED.map(async (tag) => [tag, await packOf(tag)] as const)).then(
      (all) => new Map(all),
    ));
  return {
    name: "english-once",
    apply: "build",
    resolveId: (id) => (id === ENGLISH_SIDE ? id : null),
    async load(id) {
      const tag = TRANSLATED.find((one) => id === `${WORDS}/${one}/index.ts`);
      if (tag === undefined && id !== ENGLISH_SIDE) return null;
      const known = await read();
      const english = englishSide([...known.values()].map(([, pack]) => pack));
      const written = tag === undefined ? undefined : known.get(tag);
      if (written === undefined) return `export const english = ${JSON.stringify(english)};`;
      const [name, pack] = written;
      const { phrases, page } = alignedTo(english, pack);
      return [
        `import { english } from ${JSON.stringify(ENGLISH_SIDE)};`,
        `import { byEnglish } from ${JSON.stringify(`${WORDS}/aligned.ts`)};`,
        `export const ${name} = { words: ${JSON.stringify(pack.words)},`,
        `phrases: byEnglish(english.phrases, ${JSON.stringify(phrases)}),`,
        `page: byEnglish(english.page, ${JSON.stringify(page)}) };`,
      ].join("\n");
    },
  };
}

/** Leaves style sheets out where there is nothing to draw on. */
function noStyles(): Plugin {
  const none = "\0no-style";
  return {
    name: "no-styles",
    enforce: "pre",
    resolveId: (id) => (id.endsWith(".css") ? none : null),
    load: (id) => (id === none ? "" : null),
  };
}

/** Puts the first screen into the page itself, so that it is seen before the scripts are there. */
function firstScreen(): Plugin {
  const path = fileURLToPath(new URL("src/web/first-screen.tsx", import.meta.url));
  return {
    name: "first-screen",
    transformIndexHtml: {
      order: "pre",
      async handler(html) {
        const { module } = await runnerImport<{ firstScreenHtml: () => string }>(path, {
          configFile: false,
          logLevel: "error",
          plugins: [yamlDocuments(), noStyles()],
        });
        return html.replace(FIRST_SCREEN, () => module.firstScreenHtml());
      },
    },
  };
}

/** Lets the scripts wait for the styles of the first screen, where both come over one slow line. */
const scriptsAfterStyles: Plugin = {
  name: "scripts-after-styles",
  transformIndexHtml: {
    order: "post",
    handler: (html) =>
      html.replaceAll(/<(?:script type="module"|link rel="modulepreload")/g, '$& fetchpriority="low"'),
  },
};

/** Where in `index.html` it goes. */
const FIRST_SCREEN = "<!-- the first screen -->";

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
  plugins: [
    react(),
    yamlDocuments(),
    withoutNotes(),
    englishOnce(),
    firstScreen(),
    scriptsAfterStyles,
    offline,
  ],
  worker: { format: "es", plugins: () => [withoutNotes()] },
  build: {
    outDir: fileURLToPath(new URL("dist/web", import.meta.url)),
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 2000,
  },
  server: { host: "127.0.0.1", port: 4173 },
});
