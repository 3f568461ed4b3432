const SECONDS = 8;

const element = <T extends HTMLElement>(id: string) => document.getElementById(id) as T;

/** Shows a sentence at the foot of the page for a while; screen readers say it. */
export function notify(text: string): void {
  const line = document.createElement("p");
  line.textContent = text;
  element("notice").append(line);
  setTimeout(() => line.remove(), SECONDS * 1000);
}

/** Asks the user to agree; Escape means no. */
export async function ask(text: string): Promise<boolean> {
  const dialog = element<HTMLDialogElement>("question");
  element("question-text").textContent = text;
  dialog.returnValue = "no";
  dialog.showModal();
  await new Promise((done) => dialog.addEventListener("close", done, { once: true }));
  return dialog.returnValue === "yes";
}
