import { Combobox, Field, Option } from "@fluentui/react-components";
import { useState } from "react";

/** What stands for "not known" among the choices; no rule has this name. */
const OPEN = "don't know yet";

/** Picks a type or a use by its name; typing narrows the choice. Where it may stay open, "don't know yet" stands first. */
export function PickRule(props: {
  label: string;
  hint?: string;
  rules: readonly { readonly id: string; readonly label: string }[];
  value: string | null;
  onPick: (label: string) => void;
  /** Given where it may be left open. */
  onOpen?: () => void;
}) {
  const [typed, setTyped] = useState<string | null>(null);
  const wanted = (typed ?? "").toLowerCase();
  const found = props.rules.filter((rule) => rule.label.toLowerCase().includes(wanted));
  return (
    <Field label={props.label} hint={props.hint}>
      <Combobox
        value={typed ?? props.value ?? ""}
        selectedOptions={props.value ? [props.value] : []}
        placeholder="not known yet"
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => setTyped(null)}
        onOptionSelect={(_, { optionValue }) => {
          setTyped(null);
          if (optionValue === OPEN) props.onOpen?.();
          else if (optionValue) props.onPick(optionValue);
        }}
      >
        {props.onOpen && <Option value={OPEN}>{OPEN}</Option>}
        {found.map((rule) => (
          <Option key={rule.id} value={rule.label} text={rule.label}>
            {rule.label}
          </Option>
        ))}
      </Combobox>
    </Field>
  );
}
