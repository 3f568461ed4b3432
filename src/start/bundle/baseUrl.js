/** Where a build will be served from, with a slash at its end: the manifest and the functions' help links point there. */
export const BASE_URL = (process.env.UNDERCHASSIS_URL ?? "https://localhost:3000/").replace(/\/*$/, "/");

/** What manifest.xml says in its place: as it stands, it serves `npm run start:excel`. */
export const MANIFEST_URL = "https://localhost:3000/";
