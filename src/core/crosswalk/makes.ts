/** Whether two words name one make, one of them more exactly: silver mica is a mica, metal film a film. */
export const isSameMake = (a: string, b: string): boolean => a === b || a.endsWith(`-${b}`) || b.endsWith(`-${a}`);
