import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

/** Whether the circuit simulator is here; the reason is printed where it is not. */
export const hasNgspice = !spawnSync("ngspice", ["--version"]).error;
if (!hasNgspice) console.warn("Skipped: ngspice is not installed (Debian: apt-get install ngspice).");

/**
 * Simulates a circuit and returns the figures that the commands print or measure, by name.
 *
 * @param circuit Lines of a SPICE netlist: one element each.
 * @param commands Analyses, then `print v(a)` or `meas tran name ...`.
 */
export function simulate(circuit: readonly string[], commands: readonly string[]): ReadonlyMap<string, number> {
  const folder = mkdtempSync(path.join(tmpdir(), "oracle-"));
  const file = path.join(folder, "circuit.cir");
  writeFileSync(file, ["a circuit", ...circuit, ".control", ...commands, "quit", ".endc", ".end", ""].join("\n"));
  try {
    const out = execFileSync("ngspice", ["-b", file], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] });
    return new Map([...out.matchAll(/^(\S+)\s+=\s+(\S+)/gm)].map((match) => [match[1]!, Number(match[2])]));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
