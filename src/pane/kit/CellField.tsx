import { Field, Input, Select } from "@fluentui/react-components";

/** A field for one cell: a choice where it holds one of a few words, else a text with what it has to be. */
export function CellField(props: {
  label: string;
  text: string;
  /** All that the cell may hold; null for a text. */
  words: readonly string[] | null;
  /** What stands for an empty cell among the words, where it may be empty. */
  empty?: string;
  /** Why the text can't stand there. */
  fault?: string | undefined;
  onText: (text: string) => void;
}) {
  const { label, text, words, empty, fault, onText } = props;
  if (words === null) {
    return (
      <Field label={label} validationMessage={fault}>
        <Input value={text} onChange={(_, { value }) => onText(value)} />
      </Field>
    );
  }
  return (
    <Field label={label}>
      <Select value={text} onChange={(_, { value }) => onText(value)}>
        {empty !== undefined && <option value="">{empty}</option>}
        {words.map((word) => (
          <option key={word}>{word}</option>
        ))}
      </Select>
    </Field>
  );
}
