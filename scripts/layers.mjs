/**
 * The layers of `src/` and what each may import. This one table feeds the lint rules that keep the layers apart.
 *
 * - `imports`: other layers, always through their `index.ts`.
 * - `folders`: folders beside `src/` that hold JSON read by the layer; `scripts` lends the command line what finds a
 *   browser.
 * - `packages`: packages from the registry; `node`: the built-in modules of Node.
 * - `pure`: no clock, no randomness, no console: these are handed in by the shells.
 */
export const layers = {
  units: { imports: [], folders: [], packages: [], node: false, pure: true },
  numerics: { imports: [], folders: [], packages: [], node: false, pure: true },
  chem: { imports: ["units", "numerics"], folders: ["data"], packages: [], node: false, pure: true },
  colour: { imports: ["units"], folders: ["data"], packages: [], node: false, pure: true },
  water: { imports: ["units", "numerics", "chem"], folders: ["data"], packages: [], node: false, pure: true },
  agronomy: {
    imports: ["units", "numerics", "chem", "colour", "water"],
    folders: ["data"],
    packages: [],
    node: false,
    pure: true,
  },
  pdf: { imports: [], folders: [], packages: ["pdfjs-dist"], node: false, pure: true },
  words: { imports: ["units"], folders: [], packages: [], node: false, pure: true },
  records: { imports: ["units"], folders: ["schemas"], packages: [], node: false, pure: true },
  storage: { imports: ["records"], folders: [], packages: ["idb"], node: false, pure: true },
  report: {
    imports: ["units", "chem", "colour", "water", "agronomy", "records", "words"],
    folders: ["data"],
    packages: [],
    node: false,
    pure: true,
  },
  server: {
    imports: [
      "units",
      "numerics",
      "chem",
      "colour",
      "water",
      "agronomy",
      "records",
      "words",
      "storage",
      "report",
    ],
    folders: ["data", "schemas"],
    packages: [],
    node: true,
    pure: false,
  },
  // The command line starts the page's server, so it alone among the shells may use another one.
  cli: {
    imports: [
      "units",
      "numerics",
      "chem",
      "colour",
      "water",
      "agronomy",
      "records",
      "words",
      "storage",
      "report",
      "server",
      "pdf",
    ],
    folders: ["data", "schemas", "examples", "scripts"],
    packages: ["yaml"],
    node: true,
    pure: false,
  },
  web: {
    imports: [
      "units",
      "numerics",
      "chem",
      "colour",
      "water",
      "agronomy",
      "records",
      "words",
      "storage",
      "report",
      "pdf",
    ],
    folders: ["data", "schemas", "examples"],
    packages: ["react", "react-dom", "read-excel-file", "workbox-window", "yaml"],
    node: false,
    pure: false,
  },
};

/** Names of all layers, in the order of the table. */
export const layerNames = Object.keys(layers);
