const TEXTS: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "Finish the cell you are typing in (Enter or Escape), then try again.",
  AccessDenied: "Excel does not allow this here. Is the sheet or the workbook protected?",
  RequestPayloadSizeLimitExceeded: "That is more than Excel takes at once.",
  RequestAborted: "Excel stopped this. Try again.",
};

/** Does work in Excel; what Excel refuses comes back as a sentence for the user. */
export async function inExcel<T>(work: (context: Excel.RequestContext) => Promise<T>, asOneUndo = false): Promise<T> {
  try {
    return asOneUndo ? await Excel.run({ mergeUndoGroup: true }, work) : await Excel.run(work);
  } catch (error) {
    const code = (error as { readonly code?: string }).code ?? "";
    throw TEXTS[code] ? new Error(TEXTS[code], { cause: error }) : error;
  }
}
