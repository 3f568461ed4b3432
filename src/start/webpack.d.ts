/** What the bundler adds to the language, as far as we use it. */
interface ImportMeta {
  webpackContext(folder: string, options: { regExp: RegExp }): { keys(): string[]; (file: string): unknown };
}

declare module "*.css" {}

declare module "*.xml" {
  const text: string;
  export default text;
}

declare module "highs/runtime" {
  const url: string;
  export default url;
}
