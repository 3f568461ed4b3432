import { Button, type ButtonProps } from "@fluentui/react-components";
import { useRef } from "react";

/** A button that asks for a file. @param accept Endings, as the browser's file dialog takes them: ".txt,.csv" */
export function PickFile(props: {
  label: string;
  accept: string;
  appearance?: ButtonProps["appearance"];
  onFile: (file: File) => void;
}) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button appearance={props.appearance ?? "secondary"} onClick={() => input.current?.click()}>
        {props.label}
      </Button>
      <input
        ref={input}
        type="file"
        accept={props.accept}
        hidden
        aria-label={props.label}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file) props.onFile(file);
        }}
      />
    </>
  );
}
