/** The oldest Node that works; package.json says the same under "engines". */
const OLDEST = [20, 19] as const;

/** Ends at once, with a sentence, on a Node that is too old. To be imported before anything that would fail there. */
function refuseOldNode(): void {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return;
  console.error(
    `Underchassis needs Node ${OLDEST.join(".")} or newer; this is ${process.versions.node}. See nodejs.org.`,
  );
  process.exit(1);
}

refuseOldNode();
