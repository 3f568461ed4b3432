import { type Kind, type ListedPart, readList } from "../../core/index.js";

const BLANK: ListedPart = {
  lines: [],
  printed: "",
  valueText: "",
  section: null,
  designators: [],
  kind: "other",
  value: null,
  valueState: "missing",
  valueMin: null,
  valueMax: null,
  tolerance: null,
  watts: null,
  volts: null,
  construction: null,
  dielectric: null,
  temperatureCoefficient: null,
  taper: null,
  quantity: 1,
  sections: null,
  inner: null,
  sameAs: null,
  partOf: null,
  stockNumber: null,
  use: null,
  from: {},
  warnings: [],
};

/** What one line of a list says, as a part of the kind it is known to be; nothing where the line holds no part. */
export function lineOf(line: string, kind: Kind): ListedPart {
  const read = (text: string) => readList([{ number: 1, text, cells: null }]).parts[0];
  const plain = line.replace(/:.*$/, "");
  const part = [read(line), read(`C1 ${plain}`)].find((each) => each && (each.kind === kind || each.value !== null));
  return { ...(part ?? BLANK), kind, printed: line, sections: null, inner: null };
}
