import path from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import FunctionsPlugin from "custom-functions-metadata-plugin";
import HtmlPlugin from "html-webpack-plugin";
import CssPlugin from "mini-css-extract-plugin";
import webpack from "webpack";
import { BASE_URL, MANIFEST_URL } from "./src/start/bundle/baseUrl.js";
import { functionFiles } from "./src/start/bundle/functionFiles.js";

const here = (...names) => path.resolve(import.meta.dirname, ...names);
/** Each function's help link points into the reference beside this build. */
class HelpLinks {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("HelpLinks", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_SUMMARIZE;
      compilation.hooks.processAssets.tap({ name: "HelpLinks", stage }, () => {
        const asset = compilation.getAsset("functions.json");
        if (!asset) return;
        const listing = JSON.parse(asset.source.source().toString());
        for (const one of listing.functions) one.helpUrl = `${BASE_URL}reference.html#${one.id}`;
        compilation.updateAsset("functions.json", new webpack.sources.RawSource(JSON.stringify(listing, null, 1)));
      });
    });
  }
}

const licenceOf = (name, file = "LICENSE") => ({
  from: here("node_modules", name, file),
  to: `licences/${name.replace(/^@/, "").replace("/", "-")}.txt`,
  toType: "file",
});

/** The character reader for photographed lists: its own worker, its core for three kinds of processor, its language. */
const OCR = [
  "tesseract.js/dist/worker.min.js",
  "tesseract.js-core/tesseract-core-lstm.wasm.js",
  "tesseract.js-core/tesseract-core-simd-lstm.wasm.js",
  "tesseract.js-core/tesseract-core-relaxedsimd-lstm.wasm.js",
  "@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz",
];

/** Typefaces that a PDF may leave to its reader, and decoders for its pictures, each with its licence. */
const PDF = ["standard_fonts", "wasm"];

const copied = [
  ...PDF.map((folder) => ({
    from: here("node_modules/pdfjs-dist", folder),
    to: `pdf/${folder}`,
    info: { minimized: true },
  })),
  ...OCR.map((file) => ({ from: here("node_modules", file), to: "ocr/[name][ext]", info: { minimized: true } })),
  { from: here("src/start/icons/*.png"), to: "icons/[name][ext]" },
  {
    from: here("manifest.xml"),
    transform: (text) => text.toString().replaceAll(MANIFEST_URL, BASE_URL),
  },
  licenceOf("@odoo/o-spreadsheet"),
  licenceOf("@odoo/owl"),
  licenceOf("bootstrap"),
  licenceOf("font-awesome", "README.md"),
];

/** Of the icon font's five formats, the one that every browser reads. */
const css = {
  loader: "css-loader",
  options: { url: { filter: (url) => !/\.(eot|svg|ttf|woff)\b/.test(url) }, sourceMap: false },
};

const htmlPage = (name) =>
  new HtmlPlugin({
    template: here(`src/start/${name}/${name}.html`),
    filename: name === "page" ? "index.html" : `${name}.html`,
    chunks: [name],
    scriptLoading: "defer",
  });

/** Two pages from one source: the embedded spreadsheet with the pane, and the pane with the functions for Excel. */
export default (_env, { mode = "production", minimize = mode === "production", output = here("dist") } = {}) => ({
  mode,
  target: "web",
  entry: { page: here("src/start/page/page.ts"), excel: here("src/start/excel/excel.ts") },
  output: {
    path: output,
    filename: "[name].js",
    chunkFilename: "[name].js",
    assetModuleFilename: "assets/[name][ext]",
  },
  devtool: mode === "production" ? false : "cheap-module-source-map",
  performance: false,
  infrastructureLogging: { level: "warn" },
  resolve: {
    extensions: [".ts", ".tsx", ".js"],
    extensionAlias: { ".js": [".ts", ".tsx", ".js"] },
    mainFields: ["module", "browser", "main"],
  },
  module: {
    rules: [
      {
        test: /\.tsx?$/,
        loader: "ts-loader",
        options: {
          transpileOnly: true,
          compilerOptions: { noEmit: false, module: "esnext", moduleResolution: "bundler" },
        },
      },
      {
        test: /\.css$/,
        use: [CssPlugin.loader, "css-loader", { loader: here("src/start/bundle/scopeToGrid.js"), ident: "scope" }],
        include: /bootstrap/,
      },
      { test: /\.css$/, use: [CssPlugin.loader, css], exclude: /bootstrap/ },
      {
        test: /[\\/](ocrAssets\.ts|pdf\.mjs|pdf\.worker\.mjs|highs\.mjs)$/,
        enforce: "pre",
        loader: here("src/start/bundle/pageAddress.js"),
      },
      { test: /\.xml$/, type: "asset/source" },
      { test: /\.wasm$/, type: "asset/resource" },
    ],
  },
  optimization: {
    minimize,
    splitChunks: {
      cacheGroups: {
        // Under another licence than ours, the spreadsheet stays a file of its own that can be replaced.
        spreadsheet: { test: /[\\/]node_modules[\\/]@odoo[\\/]/, name: "o-spreadsheet", chunks: "all", priority: 20 },
        fluent: {
          test: /[\\/]node_modules[\\/](react|react-dom|scheduler|@fluentui|@griffel)[\\/]/,
          name: "interface",
          chunks: "all",
          priority: 10,
        },
      },
    },
  },
  plugins: [
    new webpack.IgnorePlugin({ resourceRegExp: /^node:module$/ }),
    new FunctionsPlugin({ input: functionFiles(), output: "functions.json" }),
    new HelpLinks(),
    new CssPlugin(),
    new CopyPlugin({ patterns: copied }),
    htmlPage("page"),
    htmlPage("excel"),
  ],
});
