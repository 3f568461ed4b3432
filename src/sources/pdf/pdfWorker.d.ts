/** The library's worker as a module; it has no types of its own, and only its being loaded counts. */
declare module "pdfjs-dist/legacy/build/pdf.worker.mjs";
