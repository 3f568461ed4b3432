/** A command of the embedded library with its payload. */
export type Step = readonly [type: string, payload: object];
