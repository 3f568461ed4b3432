/** How the reference looks: the host's type, one accent, light and dark, narrow and wide, and on paper. */
export const STYLE = `
:root { color-scheme: light dark; --accent: #0e5f5b; --line: #d0d0d0; }
@media (prefers-color-scheme: dark) { :root { --accent: #6cc7be; --line: #4a4a4a; } }
body { font: 16px/1.5 "Segoe UI", system-ui, sans-serif; max-width: 46rem; margin: 0 auto; padding: 1rem; }
h1, h2, h3 { line-height: 1.2; }
h2 { margin-top: 2.5rem; border-bottom: 1px solid var(--line); }
h3 { margin: 2rem 0 0.25rem; color: var(--accent); }
a { color: var(--accent); overflow-wrap: anywhere; }
code { font-family: Consolas, ui-monospace, monospace; font-size: 0.95em; overflow-wrap: anywhere; }
nav p { margin: 0.5rem 0; }
nav a { margin-left: 0.5rem; }
dl { display: grid; grid-template-columns: minmax(6rem, max-content) 1fr; gap: 0.25rem 1rem; margin: 0.5rem 0; }
dt { font-weight: 600; overflow-wrap: anywhere; }
dd { margin: 0; }
figure { margin: 0.75rem 0; }
table { border-collapse: collapse; margin-top: 0.25rem; font-variant-numeric: tabular-nums; display: block; overflow-x: auto; }
td { border: 1px solid var(--line); padding: 0.15rem 0.6rem; }
section:target h3 { outline: 2px solid var(--accent); outline-offset: 4px; }
@media (max-width: 30rem) { dl { grid-template-columns: 1fr; gap: 0; } dd { margin-bottom: 0.5rem; } }
@media print { nav { display: none; } body { font-size: 11pt; } section { break-inside: avoid; } }
`;
