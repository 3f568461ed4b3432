/** The files that hold cell functions, in the order of their names. */
export function functionFiles(): string[];
