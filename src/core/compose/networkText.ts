import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import { readValue } from "../quantity/readValue.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Network } from "./network.js";

const HOW = "Write parts in series with +, in parallel with ||, and groups in parentheses: (100 k + 22 k) || 1 M.";

/**
 * A network as a restorer draws it in one line: `1.6 M + 1.6 M` in series, `220 pF || 30 pF` in parallel.
 *
 * @example writeNetwork({ parallel: [{ part: 220e-12 }, { part: 30e-12 }] }, "capacitor") // "220 pF || 30 pF"
 */
export function writeNetwork(network: Network, kind: Kind): string {
  if ("part" in network) return writeValue(network.part, kind);
  const grouped = (inner: Network) => ("part" in inner ? writeNetwork(inner, kind) : `(${writeNetwork(inner, kind)})`);
  return "series" in network ? network.series.map(grouped).join(" + ") : network.parallel.map(grouped).join(" || ");
}

/**
 * The network that such a text says. A group holds one join only, so that no rule of precedence has to be known.
 *
 * @throws PartsError unreadable when brackets don't match, joins are mixed, or a value can't be read
 * @example readNetwork("220 pF || 30 pF", "capacitor") // { parallel: [{ part: 2.2e-10 }, { part: 3e-11 }] }
 */
export function readNetwork(text: string, kind: Kind): Network {
  const tokens = text.split(/(\+|\|\|?|∥|[()])/).filter((token) => token.trim() !== "");
  const refuse = () => new PartsError("unreadable", text, HOW);
  let at = 0;
  const network = group();
  if (at < tokens.length) throw refuse();
  return network;

  function group(): Network {
    const members = [member()];
    const join = joinAt(at);
    while (joinAt(at)) {
      if (joinAt(at) !== join) throw refuse();
      at++;
      members.push(member());
    }
    if (!join) return members[0]!;
    return join === "series" ? { series: members } : { parallel: members };
  }

  function member(): Network {
    const token = tokens[at++];
    if (token === undefined || token === ")" || joinAt(at - 1)) throw refuse();
    if (token !== "(") return { part: readValue(token, { kind }).value };
    const inner = group();
    if (tokens[at++] !== ")") throw refuse();
    return inner;
  }

  function joinAt(place: number): "series" | "parallel" | null {
    const token = tokens[place];
    if (token === "+") return "series";
    return token?.startsWith("|") || token === "∥" ? "parallel" : null;
  }
}
