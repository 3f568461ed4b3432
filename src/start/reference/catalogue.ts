import { readFileSync } from "node:fs";
import path from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import ts from "typescript";
import { functionFiles } from "../bundle/functionFiles.js";

/** One argument as the hosts describe it; `choices` are its names where it takes one of a list. */
export type Parameter = {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
  readonly choices: readonly string[];
};

/** One cell function with all its JSDoc says; `example` reads `LUG.NAME(...) -> answer`. */
export type CellFunction = {
  readonly id: string;
  readonly exported: string;
  readonly file: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly Parameter[];
  readonly returns: string;
  readonly example: string;
};

type Metadata = {
  readonly functions: readonly {
    readonly id: string;
    readonly description: string;
    readonly helpUrl: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly description?: string;
      readonly optional?: boolean;
      readonly customEnumId?: string;
    }[];
  }[];
  readonly enums?: readonly { readonly id: string; readonly values: readonly { readonly stringValue: string }[] }[];
};

/** Every cell function with its arguments and its example, file by file as they stand there: what the reference shows. */
export async function catalogue(): Promise<CellFunction[]> {
  const { metadataJson, associate } = await generated();
  const metadata = JSON.parse(metadataJson) as Metadata;
  const choicesOf = new Map(
    metadata.enums?.map((list) => [list.id, list.values.map(({ stringValue }) => stringValue)]),
  );
  const tagsOf = new Map(functionFiles().flatMap((file) => [...tagsIn(file)]));
  return associate.map(({ id, functionName, sourceFileName }) => {
    const entry = metadata.functions.find((found) => found.id === id)!;
    return {
      id,
      exported: functionName,
      file: path.basename(sourceFileName),
      description: oneLine(entry.description),
      helpUrl: entry.helpUrl,
      parameters: entry.parameters.map((parameter) => ({
        name: parameter.name,
        description: oneLine(parameter.description ?? ""),
        optional: parameter.optional ?? false,
        choices: choicesOf.get(parameter.customEnumId ?? "") ?? [],
      })),
      ...tagsOf.get(functionName)!,
    };
  });
}

async function generated() {
  const result = await generateCustomFunctionsMetadata(functionFiles());
  if (result.errors.length > 0) throw new Error(result.errors.join("\n"));
  return result;
}

type Tags = Pick<CellFunction, "returns" | "example">;

/** What the metadata tool leaves out: of each function that a file declares, what it returns and its example. */
function* tagsIn(file: string): Generator<[exported: string, tags: Tags]> {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
  for (const node of source.statements) {
    if (!ts.isFunctionDeclaration(node) || !node.name) continue;
    const tags = ts.getJSDocTags(node);
    const textOf = (name: string) => {
      const tag = tags.find(({ tagName }) => tagName.text === name);
      return oneLine(ts.getTextOfJSDocComment(tag?.comment) ?? "");
    };
    yield [node.name.text, { returns: textOf("returns"), example: textOf("example") }];
  }
}

const oneLine = (text: string) => text.replace(/\s+/g, " ").trim();
