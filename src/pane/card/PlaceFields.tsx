import { Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import { sayStep } from "../../commands/decideRows.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { attempt, PARTS_SHEET, type PartsRow, readValue } from "../../core/index.js";
import type { Written } from "../../hosts/host.js";
import { useBench } from "../bench.js";
import { Quiet, Stack } from "../kit/Stack.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;
type Key = keyof PartsRow & keyof typeof PARTS_SHEET.columns;

type PlaceField = {
  readonly key: Key;
  /** Empty for words. */
  readonly unit: string;
  /** The kinds of part that it bears on; every kind where left out. */
  readonly of?: readonly string[];
};

/** What a person may know of a part's place, as it bears on the part. */
const FIELDS: readonly PlaceField[] = [
  { key: "voltsThere", unit: "V" },
  { key: "peakVoltsThere", unit: "V" },
  { key: "ampsThere", unit: "A", of: ["resistor", "rectifier", "fuse", "lamp"] },
  { key: "celsiusThere", unit: "°C" },
  { key: "gridResistor", unit: "Ω", of: ["capacitor"] },
  { key: "mostCapacitance", unit: "µF", of: ["capacitor"] },
  { key: "roomLength", unit: "mm" },
  { key: "roomDiameter", unit: "mm" },
  { key: "tagSpan", unit: "mm" },
  { key: "alsoKnown", unit: "" },
];

const VALUED: Partial<Record<Key, "resistor" | "capacitor">> = {
  gridResistor: "resistor",
  mostCapacitance: "capacitor",
};

/** What is written of a text, or why it can't be: a value stays as it was typed, a figure is in its column's unit. */
function written(key: Key, text: string): { readonly cell: Written; readonly fault?: string } {
  if (text.trim() === "") return { cell: "" };
  const kind = VALUED[key];
  if (kind) {
    const fault = attempt(
      () => void readValue(text, { kind }),
      ({ message }) => message,
    );
    return fault ? { cell: null, fault } : { cell: text.trim() };
  }
  const { read, wants } = PARTS_SHEET.columns[key];
  const cell = read(text) as number | string | null;
  return cell === null ? { cell, fault: wants } : { cell };
}

/** What is known of a part's place: its volts, its heat, its room. Leaving a field writes it, and the card says what follows. */
export function PlaceFields({ row }: { row: PartRow }) {
  const fields = FIELDS.filter(({ of }) => !of || of.includes(row.values.kind ?? ""));
  return (
    <Stack title="Its place" isCard>
      <Quiet>What you know of it; empty is not known. A length may be in inches (3/8 in).</Quiet>
      {fields.map((field) => (
        <OneField key={`${row.at} ${field.key}`} row={row} field={field} />
      ))}
    </Stack>
  );
}

function OneField({ row, field: { key, unit } }: { row: PartRow; field: PlaceField }) {
  const { book, run } = useBench();
  const stands = String(row.values[key] ?? "");
  const [typed, setTyped] = useState<string | null>(null);
  const { cell, fault } = written(key, typed ?? "");
  const { head } = PARTS_SHEET.columns[key];
  const write = () => {
    if (typed === null || fault) return;
    void run(sayStep(book, [row], key, cell, `the ${head} ${typed || "not known"}`), true);
    setTyped(null);
  };
  return (
    <Field label={unit ? `${head}, ${unit}` : head} validationMessage={typed === null ? undefined : fault}>
      <Input
        value={typed ?? stands}
        onChange={(_, { value }) => setTyped(value)}
        onBlur={write}
        onKeyDown={(event) => event.key === "Enter" && write()}
      />
    </Field>
  );
}
