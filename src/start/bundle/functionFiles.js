import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const FOLDER = path.resolve(import.meta.dirname, "../../functions");

/** The files that hold cell functions, in the order of their names. */
export const functionFiles = () =>
  readdirSync(FOLDER)
    .filter((file) => file.endsWith(".ts"))
    .map((file) => path.join(FOLDER, file))
    .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));
