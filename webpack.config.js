const { execFileSync } = require("node:child_process");
const { createServer } = require("node:net");
const { basename, resolve } = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const { generateCustomFunctionsMetadata } = require("custom-functions-metadata");
const CustomFunctionsMetadataPlugin = require("custom-functions-metadata-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");
const { NormalModuleReplacementPlugin } = require("webpack");

const PORT = 3000;
const DEVELOPMENT_URL = `https://localhost:${PORT}/`;
const DEVELOPMENT_ID = "58e23272-da88-485b-bd96-4547cf5c8ad1";
const PRODUCTION_ID = "b7f3f1c2-4f0e-4d57-9a43-0c6f3a5d8e21";
/** The files of the worksheet functions: of functions.json, of the add-in and of the desk. */
const FUNCTIONS = ["uniformity", "application", "water", "summary", "areas", "layout", "demand", "bed"].map((family) =>
  resolve(__dirname, `src/functions/${family}.ts`),
);

const page = (template, chunks, templateParameters = {}) =>
  new HtmlPlugin({
    template,
    filename: basename(template).replace(".ejs", ".html"),
    chunks,
    chunksSortMode: "manual",
    templateParameters,
  });

/** The page behind each function's help address, from the same descriptions that Excel shows. */
async function helpPage() {
  const { metadataJson } = await generateCustomFunctionsMetadata(FUNCTIONS, false);
  return page("src/taskpane/help/help.ejs", [], JSON.parse(metadataJson));
}

/** The address that the add-in is put up at, ending in a slash. */
function productionUrl() {
  const address = process.env.CANFALL_URL ?? "";
  if (!/^https:\/\/./.test(address)) {
    throw new Error(
      "CANFALL_URL must be the https address that dist/ will be served from, such as https://example.org/",
    );
  }
  return address.endsWith("/") ? address : `${address}/`;
}

/** The manifest for that address. */
function productionManifest(text, url) {
  const manifest = text
    .replaceAll(DEVELOPMENT_URL, url)
    .replaceAll(
      `<AppDomain>${DEVELOPMENT_URL.slice(0, -1)}</AppDomain>`,
      `<AppDomain>${new URL(url).origin}</AppDomain>`,
    )
    .replace(DEVELOPMENT_ID, PRODUCTION_ID);
  if (manifest.includes("localhost") || manifest.includes(DEVELOPMENT_ID)) {
    throw new Error("dist/manifest.xml must hold neither localhost nor the development Id");
  }
  return manifest;
}

const assets = { from: "src/taskpane/assets", to: "assets" };
const picture = { from: "src/desk/desk.png", to: "assets/desk.png" };
/** For hosts that read one: Excel fetches functions.json from its own address. */
const hostHeaders = { from: "src/home/headers.txt", to: "_headers", toType: "file" };
const fontLicense = { from: require.resolve("@fontsource/carlito/LICENSE"), to: "carlito-license.txt" };
const templates = { from: "templates/*.xlsx", to: "[name][ext]", noErrorOnMissing: true };
const PACK = resolve(__dirname, "src/commands/pack-example.ts");
/** The examples as the desk opens them, so that it reads no file when it starts. */
const examples = {
  from: "templates/example-*.xlsx",
  to: "[name].json",
  noErrorOnMissing: true,
  // in a process of its own: the cache of webpack can't follow modules that tsx loads into this one
  transform: (_bytes, path) =>
    execFileSync(process.execPath, ["--import", "tsx", PACK, path], { maxBuffer: 100 * 1024 ** 2 }),
};

function shared(name, production) {
  return {
    name,
    mode: production ? "production" : "development",
    devtool: production ? false : "cheap-source-map",
    target: ["web", "es2022"],
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          exclude: /node_modules/,
          loader: "ts-loader",
          options: {
            transpileOnly: true,
            compilerOptions: { composite: false, emitDeclarationOnly: false, declaration: false },
          },
        },
        { test: /\.css$/, use: ["style-loader", "css-loader"] },
        {
          test: /@univerjs\/[^/]+\/lib\/es\/\w+\.js$/,
          loader: resolve(__dirname, "src/desk/univer-fixes/drawing/fields-loader.js"),
        },
      ],
    },
    optimization: { minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.esbuildMinify })] },
    performance: { hints: false },
    stats: "errors-warnings",
    infrastructureLogging: { level: "warn" },
    cache: production
      ? false
      : {
          type: "filesystem",
          cacheDirectory: resolve(__dirname, ".cache/webpack"),
          buildDependencies: { config: [__filename] },
        },
  };
}

const metadata = () => new CustomFunctionsMetadataPlugin({ output: "functions.json", input: FUNCTIONS });

/** functions.json for the address that the add-in is put up at; errors in cells are passed to the functions too. */
const toldToExcel = (text, url) =>
  JSON.stringify({ allowErrorForDataTypeAny: true, ...JSON.parse(text.replaceAll(DEVELOPMENT_URL, url)) }, null, 2);

const finishedMetadata = (url) => ({
  apply(compiler) {
    // the pages' own compilations would hand up an unfinished one when they are made again
    compiler.hooks.compilation.tap("finished metadata", (compilation) => {
      if (compilation.compiler.isChild()) delete compilation.assets["functions.json"];
    });
    compiler.hooks.thisCompilation.tap("finished metadata", (compilation) => {
      const stage = compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_DERIVED;
      compilation.hooks.processAssets.tap({ name: "finished metadata", stage }, () => {
        if (!compilation.getAsset("functions.json")) return;
        compilation.updateAsset(
          "functions.json",
          (old) => new compiler.webpack.sources.RawSource(toldToExcel(old.source().toString(), url)),
        );
      });
    });
  },
});

/** The grid brings hyphenation patterns of 74 languages, up to 91 kB each when zipped; the desk hyphenates nothing. */
const noHyphenation = () =>
  new NormalModuleReplacementPlugin(/^\.\/[a-z0-9-]+-[\w-]{8}\.js$/, (asked) => {
    if (/@univerjs[\\/]engine-render[\\/]lib[\\/]es$/.test(asked.context))
      asked.request = "data:text/javascript,export {}";
  });

const announce = (text) => ({
  apply(compiler) {
    let said = false;
    compiler.hooks.done.tap("announce", (stats) => {
      if (!said && !stats.hasErrors()) setImmediate(() => console.log(text));
      said ||= !stats.hasErrors();
    });
  },
});

const askedPort = () => Number(/ --port[ =](\d+)/.exec(process.argv.join(" "))?.[1] ?? PORT);

/** Ends in one line where the port that the desk is asked for is taken. */
async function freePort() {
  const port = askedPort();
  await new Promise((free) => {
    const trial = createServer();
    trial.once("error", ({ code }) => {
      if (code !== "EADDRINUSE") return free();
      console.error(`Port ${port} is taken by another program. Choose another one: npm start -- --port ${port + 1}`);
      process.exit(1);
    });
    trial.listen(port, "localhost", () => trial.close(free));
  });
}

const server = { port: PORT, host: "localhost", hot: false, static: false, client: { overlay: false } };

const desk = async (url) => ({
  ...shared("desk", url !== null),
  entry: { desk: ["./src/desk/functions/custom-functions.ts", ...FUNCTIONS, "./src/desk/index.tsx"] },
  output: { path: resolve(__dirname, "dist/desk"), filename: "[name].js", clean: true },
  plugins: [
    metadata(),
    new CopyPlugin({ patterns: [assets, templates, examples, fontLicense] }),
    page("src/desk/index.html", ["desk"]),
    noHyphenation(),
    await helpPage(),
    finishedMetadata(url ?? DEVELOPMENT_URL),
    ...(url ? [] : [announce(`The desk is ready: http://localhost:${askedPort()}/`)]),
  ],
  ...(url ? {} : { devServer: server }),
});

/** What Excel needs to take the add-in from this machine; makes certificates and asks to trust their authority. */
const serverForExcel = async () => ({
  ...server,
  headers: { "Access-Control-Allow-Origin": "*" },
  server: { type: "https", options: await require("office-addin-dev-certs").getHttpsServerOptions() },
});

const addIn = async (url, serving) => ({
  ...shared("add-in", url !== null),
  entry: {
    functions: FUNCTIONS,
    taskpane: "./src/taskpane/index.tsx",
    home: "./src/home/home.ts",
    probe: "./src/home/probe.ts",
    save: "./src/home/save.ts",
  },
  output: {
    path: resolve(__dirname, "dist"),
    filename: "[name].js",
    ...(url ? { chunkFilename: "[name].[contenthash:8].js" } : {}),
    clean: { keep: /^desk\// },
  },
  plugins: [
    metadata(),
    new CopyPlugin({
      patterns: [
        assets,
        templates,
        picture,
        ...(url
          ? [
              hostHeaders,
              {
                from: "manifest.xml",
                transform: (text) => productionManifest(text.toString("utf8"), url),
              },
            ]
          : []),
      ],
    }),
    page("src/taskpane/taskpane.html", ["functions", "taskpane"]),
    page("src/home/index.ejs", ["home"], { url: url ?? DEVELOPMENT_URL }),
    page("src/home/probe.html", ["probe"]),
    page("src/home/save.html", ["save"]),
    await helpPage(),
    finishedMetadata(url ?? DEVELOPMENT_URL),
    ...(url ? [] : [announce(`The add-in is ready: ${DEVELOPMENT_URL}taskpane.html`)]),
  ],
  ...(serving ? { devServer: await serverForExcel() } : {}),
});

module.exports = async (env) => {
  if (env.production) {
    const url = productionUrl();
    return [await addIn(url, false), await desk(url)];
  }
  const serving = env.WEBPACK_SERVE === true;
  if (!env.desk) return addIn(null, serving);
  if (serving) await freePort();
  return desk(null);
};
