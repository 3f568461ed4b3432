import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { ReactNode } from "react";

const useStyles = makeStyles({
  stack: { display: "flex", flexDirection: "column", gap: "8px", minWidth: 0 },
  row: { display: "flex", flexWrap: "wrap", gap: "8px", alignItems: "center" },
  card: {
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    padding: "10px",
  },
  title: { fontSize: "16px", lineHeight: "22px", fontWeight: 600, margin: 0 },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** Things below each other; as a card, with its own name. */
export function Stack(props: { title?: string; isCard?: boolean; children: ReactNode }) {
  const styles = useStyles();
  const look = mergeClasses(styles.stack, props.isCard && styles.card);
  if (!props.title) return <div className={look}>{props.children}</div>;
  return (
    <section className={look} aria-label={props.title}>
      <h2 className={styles.title}>{props.title}</h2>
      {props.children}
    </section>
  );
}

/** Things beside each other, on further lines where there is no room. */
export function Row(props: { children: ReactNode }) {
  return <div className={useStyles().row}>{props.children}</div>;
}

/** A sentence that stands back. */
export function Quiet(props: { children: ReactNode }) {
  return <div className={useStyles().quiet}>{props.children}</div>;
}
