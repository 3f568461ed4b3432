import type { Book } from "./book.js";
import { editSetStep } from "./editSet.js";
import { doesSomething, nothingToDo, type Step } from "./step.js";
import { valuesStep } from "./values.js";

/** Closes a finished set: its formulas become values, its rules stay as they were, its card says closed. */
export function closeSetStep(book: Book, short: string): Step {
  const { parts, projects } = book;
  const project = projects?.rows.find(({ values }) => values.short === short);
  if (!parts || !project) return nothingToDo("No such set");
  const values = valuesStep(
    parts,
    parts.rows.filter((row) => row.values.project === short),
  );
  const rules = project.values.rules ?? "";
  const card = editSetStep(book, short, { state: "closed", rules });
  const name = doesSomething(values) ? `Close ${short}: ${values.name}` : `Close ${short}`;
  return { ...values, name, changes: [...values.changes, ...card.changes] };
}
