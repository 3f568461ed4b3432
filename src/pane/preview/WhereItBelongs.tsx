import { Field, Input } from "@fluentui/react-components";

/** What a person says of a list before it is written: its set by a short and a full name, the set's year, the document's name. */
export type Belongs = {
  readonly short: string;
  readonly name: string;
  readonly year: string;
  readonly document: string;
};

/** The short name stands in every id, so it stays short. */
const LONGEST_SHORT = 6;

/** True where set and document have their names, without which nothing can be written. */
export const isNamed = ({ short, name, document }: Belongs) =>
  [short, name, document].every((each) => each.trim() !== "");

/** The set and the document that a list belongs to; the full name is asked of a set that is new. */
export function WhereItBelongs(props: { belongs: Belongs; say: (belongs: Belongs) => void; isKnown: boolean }) {
  const { belongs } = props;
  const say =
    (key: keyof Belongs) =>
    (_: unknown, { value }: { readonly value: string }) =>
      props.say({ ...belongs, [key]: key === "short" ? value.trim().slice(0, LONGEST_SHORT) : value });
  return (
    <>
      <Field label="Short name of the set" hint="Stands in every id: HL-14">
        <Input value={belongs.short} onChange={say("short")} />
      </Field>
      {!props.isKnown && (
        <Field label="What it is">
          <Input value={belongs.name} onChange={say("name")} />
        </Field>
      )}
      <Field label="Year of the set" hint="Bears on what an unstated part was">
        <Input value={belongs.year} onChange={say("year")} />
      </Field>
      <Field label="Name of this document" hint="The same name as before reads it again">
        <Input value={belongs.document} onChange={say("document")} />
      </Field>
    </>
  );
}
