import { focusGrid } from "./grid.js";

const NARROWEST = 320;
const STEP = 20;
const WIDTH_KEY = "underchassis.pane-width";

type Side = "grid" | "pane";

const side = (name: Side) => document.getElementById(name) as HTMLElement;

/** Two tabs on a narrow page, a divider that moves on a wide one, and F6 from grid to pane and back. */
export function arrangePage(): void {
  arrangeTabs();
  arrangeDivider();
  window.addEventListener("keydown", (event) => {
    if (event.key !== "F6") return;
    event.preventDefault();
    goTo(side("pane").contains(document.activeElement) ? "grid" : "pane");
  });
}

/** Brings a side of the page to the front and puts the keyboard there. */
export function goTo(name: Side): void {
  showTab(name);
  if (name === "grid") focusGrid(side("grid"));
  else (firstStop(side("pane")) ?? side("pane")).focus();
}

function firstStop(within: HTMLElement): HTMLElement | null {
  return within.querySelector<HTMLElement>("button:not([disabled]), [href], input, select, textarea, [tabindex='0']");
}

function arrangeTabs(): void {
  for (const name of ["grid", "pane"] as const) {
    const tab = document.getElementById(`tab-${name}`) as HTMLButtonElement;
    tab.addEventListener("click", () => showTab(name));
    tab.addEventListener("keydown", (event) => {
      if (!["ArrowLeft", "ArrowRight"].includes(event.key)) return;
      const other = name === "grid" ? "pane" : "grid";
      showTab(other);
      document.getElementById(`tab-${other}`)?.focus();
    });
  }
  showTab("pane");
}

function showTab(name: Side): void {
  document.body.dataset.tab = name;
  for (const other of ["grid", "pane"] as const) {
    const tab = document.getElementById(`tab-${other}`) as HTMLButtonElement;
    tab.setAttribute("aria-selected", String(other === name));
    tab.tabIndex = other === name ? 0 : -1;
  }
}

function arrangeDivider(): void {
  const divider = document.getElementById("divider") as HTMLElement;
  setWidth(divider, Number(localStorage.getItem(WIDTH_KEY)) || 360);
  divider.addEventListener("pointerdown", (down) => {
    divider.setPointerCapture(down.pointerId);
    divider.onpointermove = (move) => setWidth(divider, window.innerWidth - move.clientX);
  });
  divider.addEventListener("pointerup", () => {
    divider.onpointermove = null;
  });
  divider.addEventListener("keydown", (event) => {
    const steps = { ArrowLeft: 1, ArrowRight: -1 }[event.key] ?? 0;
    if (steps !== 0) setWidth(divider, side("pane").clientWidth + steps * STEP);
  });
}

function setWidth(divider: HTMLElement, wanted: number): void {
  const widest = Math.max(NARROWEST, window.innerWidth - NARROWEST);
  const width = Math.round(Math.min(Math.max(wanted, NARROWEST), widest));
  document.documentElement.style.setProperty("--pane-width", `${width}px`);
  divider.setAttribute("aria-valuenow", String(width));
  divider.setAttribute("aria-valuemin", String(NARROWEST));
  divider.setAttribute("aria-valuemax", String(widest));
  localStorage.setItem(WIDTH_KEY, String(width));
  window.dispatchEvent(new Event("resize"));
}
