/** What Excel and the embedded page provide as a global, for tests in Node: errors that a cell can show. */
class CellError {
  constructor(
    readonly code: string,
    readonly message: string = "",
  ) {}
}

/** Puts the global in place that cell functions expect of a host. */
export function provideCustomFunctions(): void {
  const ErrorCode = { invalidValue: "#VALUE!", notAvailable: "#N/A" };
  Object.assign(globalThis, { CustomFunctions: { Error: CellError, ErrorCode } });
}
