import webpack, { type Configuration } from "webpack";
import { referencePlugin } from "./referencePlugin.js";

/** How to bundle: `minimize` defaults to what the mode wants, `output` to dist. */
export type BundleOptions = {
  readonly mode: "production" | "development";
  readonly minimize?: boolean;
  readonly output?: string;
};

/** The bundler's settings, from the file where its own command line looks for them too. */
export async function configuration(options: BundleOptions): Promise<Configuration> {
  const settings: string = "../../../webpack.config.js";
  const { default: configure } = await import(settings);
  const configured: Configuration = configure({}, options);
  return { ...configured, plugins: [...(configured.plugins ?? []), referencePlugin] };
}

/** Bundles the pages; throws with the bundler's own words where that fails. */
export async function bundle(options: BundleOptions): Promise<void> {
  const compiler = webpack(await configuration(options));
  const stats = await new Promise<webpack.Stats | undefined>((resolve, reject) =>
    compiler.run((error, done) => (error ? reject(error) : resolve(done))),
  );
  await new Promise((done) => compiler.close(done));
  if (stats?.hasErrors()) throw new Error(stats.toString({ all: false, errors: true }));
}
