import postcss from "postcss";

/** Selectors of the whole document, in its light scheme: inside our page they mean the grid. */
const DOCUMENT = /^(:root|html|body|\[data-bs-theme=light\])(?=$|[\s,.:[>])/;

/** Keeps a style sheet's rules, written for a whole page, inside `#grid`; `:where` leaves their weight as it was. */
const scopeToGrid = {
  postcssPlugin: "scope-to-grid",
  Rule(rule) {
    const isFrame = rule.parent?.type === "atrule" && /keyframes$/.test(rule.parent.name);
    if (isFrame || rule.isScoped) return;
    rule.isScoped = true;
    rule.selectors = rule.selectors.map((selector) =>
      DOCUMENT.test(selector) ? selector.replace(DOCUMENT, ":where(#grid)") : `:where(#grid) ${selector}`,
    );
  },
};

/** A webpack loader: the library's grid wants a CSS framework, and the pane beside it must not feel it. */
export default function load(source) {
  const done = this.async();
  postcss([scopeToGrid])
    .process(source, { from: this.resourcePath })
    .then(({ css }) => done(null, css), done);
}
