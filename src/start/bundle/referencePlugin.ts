import webpack, { type WebpackPluginInstance } from "webpack";
import { catalogue } from "../reference/catalogue.js";
import { inChapters } from "../reference/chapters.js";
import { referencePage } from "../reference/referencePage.js";

/**
 * Puts the reference of cell functions, where help links point, beside the pages: `reference.html`. And what their metadata
 * lacks, for the pane: the chapters in order, with an example of each function: `chapters.json`.
 */
export const referencePlugin: WebpackPluginInstance = {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Reference", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: "Reference", stage }, async () => {
        const functions = await catalogue();
        const chapters = inChapters(functions).map(({ title, functions }) => ({
          title,
          functions: functions.map(({ id, example }) => ({ id, example })),
        }));
        compilation.emitAsset("reference.html", new webpack.sources.RawSource(referencePage(functions)));
        compilation.emitAsset("chapters.json", new webpack.sources.RawSource(JSON.stringify(chapters)));
      });
    });
  },
};
