import js from "@eslint/js";
import boundaries from "eslint-plugin-boundaries";
import { defineConfig } from "eslint/config";
import tseslint from "typescript-eslint";
import { layerNames, layers } from "./scripts/layers.mjs";

const source = ["src/**/*.{ts,tsx}"];
const tests = ["**/*.test.{ts,tsx}", "test/**/*.{ts,tsx}"];
const folderNames = ["data", "schemas", "examples", "test", "scripts"];

/** Wall 1: who may import whom, from the table of layers; everything not allowed here is refused. */
function boundaryPolicies() {
  const ofLayers = layerNames.flatMap((name) => {
    const layer = layers[name];
    const targets = [
      ...layer.imports.map((other) => ({ element: { type: other, fileInternalPath: "index.ts" } })),
      ...layer.folders.map((folder) => ({ element: { type: folder } })),
      ...layer.packages.map((source) => ({ module: { origin: "external", source } })),
      ...(layer.node ? [{ module: { origin: "core" } }] : []),
    ];
    return targets.map((to) => ({ from: { element: { type: name } }, allow: { to } }));
  });
  // A test stands beside its source and keeps to the same layers, but may also use the test tools.
  const ofTests = [
    { module: { origin: "core" } },
    { module: { origin: "external" } },
    { element: { types: ["test", "data", "schemas", "examples"] } },
  ].map((to) => ({ from: { file: { categories: "test" } }, allow: { to } }));
  // The folder `test/` checks the whole, so it may look anywhere.
  const ofTestFolder = {
    from: { element: { type: "test" } },
    allow: { to: { element: { types: [...layerNames, ...folderNames] } } },
  };
  return [...ofLayers, ...ofTests, ofTestFolder];
}

/** Wall 2: another layer is imported only through its `index.ts`. One pattern for each depth of folder in a layer. */
const indexOnly = layerNames.flatMap((name) =>
  [0, 1, 2].map((depth) => {
    const others = layerNames.filter((other) => other !== name).join("|");
    return {
      files: [`src/${name}/${"*/".repeat(depth)}*.{ts,tsx}`],
      rules: {
        "no-restricted-imports": [
          "error",
          {
            patterns: [
              {
                regex: `^${"(?:\\.\\./)".repeat(depth + 1)}(?:${others})/(?!index\\.ts$)`,
                message: "Import another layer only through its index.ts.",
              },
              {
                regex: "^\\.{1,2}/(?!.*\\.(?:ts|tsx|mjs|json|yaml|csv|css|svg)(?:\\?[a-z&]+)?$)",
                message: "Write the file extension of a relative import.",
              },
            ],
          },
        ],
      },
    };
  }),
);

const noDefaultExport = [
  { selector: "ExportDefaultDeclaration", message: "Use a named export." },
  { selector: "ExportSpecifier[exported.name='default']", message: "Use a named export." },
];

/** Wall 3 is the type check of each layer without DOM or Node types; these rules hold where types cannot. */
const pureLayers = {
  files: layerNames.filter((name) => layers[name].pure).map((name) => `src/${name}/**/*.ts`),
  ignores: tests,
  rules: {
    "no-console": "error",
    "no-restricted-globals": [
      "error",
      ...["fetch", "window", "document", "process", "globalThis", "setTimeout", "performance", "crypto"].map(
        (name) => ({ name, message: "Layers below the shells are handed what they need from outside." }),
      ),
    ],
    "no-restricted-properties": [
      "error",
      { object: "Math", property: "random", message: "Take a seeded generator as an argument." },
      { object: "Date", property: "now", message: "Take the time as an argument." },
    ],
    "no-restricted-syntax": [
      "error",
      ...noDefaultExport,
      {
        selector: "NewExpression[callee.name='Date'][arguments.length=0]",
        message: "Take the time as an argument.",
      },
    ],
  },
};

export default defineConfig(
  { ignores: ["node_modules/", "dist/", "coverage/", "test-output/"] },
  { linterOptions: { reportUnusedDisableDirectives: "error" } },
  js.configs.recommended,
  {
    files: ["**/*.{ts,tsx,mts}"],
    extends: [tseslint.configs.strict],
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      // Array elements are `T | undefined` here; inside a numeric loop `a[i]!` says that the index is in range.
      "@typescript-eslint/no-non-null-assertion": "off",
    },
  },
  {
    files: ["src/**/*.{ts,tsx}", "test/**/*.{ts,tsx}"],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/no-base-to-string": "error",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": ["error", { checksVoidReturn: { attributes: false } }],
      "@typescript-eslint/only-throw-error": "error",
      "@typescript-eslint/require-array-sort-compare": ["error", { ignoreStringArrays: true }],
      "@typescript-eslint/switch-exhaustiveness-check": [
        "error",
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: tests,
    rules: {
      // A test makes faulty documents by taking keys out.
      "@typescript-eslint/no-dynamic-delete": "off",
    },
  },
  {
    // A test may look into `any`, for instance into parsed JSON; the product may not.
    files: source,
    ignores: tests,
    rules: {
      "@typescript-eslint/no-unsafe-argument": "error",
      "@typescript-eslint/no-unsafe-assignment": "error",
      "@typescript-eslint/no-unsafe-call": "error",
      "@typescript-eslint/no-unsafe-member-access": "error",
      "@typescript-eslint/no-unsafe-return": "error",
    },
  },
  {
    files: source,
    plugins: { boundaries },
    settings: {
      "boundaries/root-path": import.meta.dirname,
      "boundaries/elements": [
        ...layerNames.map((name) => ({ type: name, pattern: `src/${name}`, partialMatch: false })),
        ...folderNames.map((name) => ({ type: name, pattern: name, partialMatch: false })),
      ],
      "boundaries/files": [{ category: "test", pattern: "**/*.test.{ts,tsx}" }],
      "boundaries/dependency-nodes": ["import", "dynamic-import", "export", "require"],
      "boundaries/additional-dependency-nodes": [
        { selector: "TSImportType Literal", kind: "type", name: "import-type" },
      ],
      "import/resolver": { typescript: { project: "tsconfig.json" } },
    },
    rules: {
      "boundaries/dependencies": [
        "error",
        {
          default: "disallow",
          checkAllOrigins: true,
          checkUnknownLocals: true,
          message:
            "{{from.element.type}} must not import {{dependency.source}}; see the table in scripts/layers.mjs.",
          policies: boundaryPolicies(),
        },
      ],
      "boundaries/no-unknown-files": "error",
    },
  },
  ...indexOnly,
  {
    files: [...source, "test/**/*.{ts,tsx}", "scripts/**/*.mjs", "bin/**/*.js"],
    // A declaration of what a bundler makes of a file cannot choose: that is a default export.
    ignores: ["**/*.d.ts"],
    rules: { "no-restricted-syntax": ["error", ...noDefaultExport] },
  },
  pureLayers,
  {
    files: source,
    ignores: tests,
    rules: {
      "max-lines": ["warn", { max: 300 }],
      "max-lines-per-function": ["warn", { max: 60 }],
    },
  },
  {
    files: ["scripts/**/*.mjs", "bin/**/*.js", "*.config.js", "test/**/*.mjs"],
    languageOptions: {
      globals: {
        console: "readonly",
        process: "readonly",
        URL: "readonly",
        setTimeout: "readonly",
        clearTimeout: "readonly",
        performance: "readonly",
      },
    },
  },
);
