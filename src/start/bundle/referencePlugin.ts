import webpack, { type WebpackPluginInstance } from "webpack";
import { catalogue } from "../reference/catalogue.js";
import { referencePage } from "../reference/referencePage.js";

/** Puts the reference of cell functions, where help links point, beside the pages: `reference.html`. */
export const referencePlugin: WebpackPluginInstance = {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Reference", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: "Reference", stage }, async () => {
        const page = referencePage(await catalogue());
        compilation.emitAsset("reference.html", new webpack.sources.RawSource(page));
      });
    });
  },
};
