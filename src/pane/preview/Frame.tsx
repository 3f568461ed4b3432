import { makeStyles, tokens } from "@fluentui/react-components";
import type { KeyboardEvent, ReactNode, RefObject } from "react";

const useStyles = makeStyles({
  frame: {
    height: "clamp(160px, 30vh, 420px)",
    overflow: "auto",
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground2,
    "@container (min-width: 620px)": { height: "60vh" },
  },
});

/** Goes to the line before or after the chosen one; null at either end. */
export type StepThrough = { readonly before: (() => void) | null; readonly after: (() => void) | null };

/** What was given, in a frame of its own that scrolls; up and down go from line to line. */
export function Frame(props: {
  name: string;
  step: StepThrough;
  ref?: RefObject<HTMLElement | null>;
  children: ReactNode;
}) {
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const go = event.key === "ArrowDown" ? props.step.after : event.key === "ArrowUp" ? props.step.before : null;
    if (!go) return;
    event.preventDefault();
    event.currentTarget.focus({ preventScroll: true });
    go();
  };
  return (
    <section
      ref={props.ref}
      className={useStyles().frame}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard
      tabIndex={0}
      aria-label={props.name}
      onKeyDown={onKeyDown}
    >
      {props.children}
    </section>
  );
}
