/** Told while something takes long: 0..1, and what is being done. */
export type OnProgress = (done: number, doing: string) => void;

/** How to go about something that takes long. */
export type Patience = { readonly onProgress?: OnProgress; readonly signal?: AbortSignal };
