/** Where a build will be served from, with a slash at its end. */
export const BASE_URL: string;
/** What manifest.xml says in its place. */
export const MANIFEST_URL: string;
