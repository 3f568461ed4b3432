import webpack, { type WebpackPluginInstance } from "webpack";
import { catalogue } from "../reference/catalogue.js";
import { referencePage } from "../reference/referencePage.js";

/**
 * Puts the reference of cell functions, where help links point, beside the pages: `reference.html`. And the one example of
 * each function, which its metadata lacks, for the pane: `examples.json`.
 */
export const referencePlugin: WebpackPluginInstance = {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Reference", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: "Reference", stage }, async () => {
        const functions = await catalogue();
        const examples = Object.fromEntries(functions.map(({ id, example }) => [id, example]));
        compilation.emitAsset("reference.html", new webpack.sources.RawSource(referencePage(functions)));
        compilation.emitAsset("examples.json", new webpack.sources.RawSource(JSON.stringify(examples)));
      });
    });
  },
};
