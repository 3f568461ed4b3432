import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { driftPicture, type PartsRow } from "../../core/index.js";

const useStyles = makeStyles({
  figure: { margin: 0, display: "flex", flexDirection: "column", gap: "2px", minWidth: 0 },
  line: { display: "flex", flexWrap: "wrap", columnGap: "8px", color: tokens.colorNeutralForeground1 },
  name: { minWidth: "48px", color: tokens.colorNeutralForeground2 },
  scale: { position: "relative", height: "16px", margin: "0 6px" },
  span: {
    position: "absolute",
    top: "2px",
    bottom: "2px",
    boxSizing: "border-box",
    minWidth: "3px",
    borderLeft: `2px solid ${tokens.colorNeutralForeground1}`,
    borderRight: `2px solid ${tokens.colorNeutralForeground1}`,
  },
  bar: {
    position: "absolute",
    left: 0,
    right: 0,
    top: "5px",
    borderTop: `2px solid ${tokens.colorNeutralForeground1}`,
  },
  fresh: { borderTopStyle: "double", borderTopWidth: "4px", top: "4px" },
  reading: {
    position: "absolute",
    top: 0,
    bottom: 0,
    width: 0,
    borderLeft: `2px dashed ${tokens.colorBrandForeground1}`,
  },
  sign: {
    position: "absolute",
    top: 0,
    transform: "translateX(-50%)",
    color: tokens.colorBrandForeground1,
  },
  axis: {
    position: "relative",
    height: "24px",
    margin: "0 6px",
    borderTop: `1px solid ${tokens.colorNeutralStroke1}`,
    color: tokens.colorNeutralForeground2,
  },
  tick: { position: "absolute", top: 0, height: "4px", borderLeft: `1px solid ${tokens.colorNeutralForeground2}` },
  figureText: {
    position: "absolute",
    top: "4px",
    transform: "translateX(-50%)",
    whiteSpace: "nowrap",
    lineHeight: "18px",
  },
});

/** A cross where it reads; an arrow to the end that it lies beyond. */
const SIGNS = { here: "M3 3l10 10m0-10L3 13", right: "M1 8h13m-5-5l5 5l-5 5", left: "M15 8H2m5-5L2 8l5 5" } as const;

const percent = (ratio: number) => `${(ratio * 100).toFixed(2)}%`;

/**
 * Listed limits, the new part's limits and the reading below each other on one scale, each with its name and figures; the
 * scale tells the distance from the printed value. What it shows is its name too, for those who hear it.
 */
export function DriftPicture({ row }: { row: PartsRow }) {
  const styles = useStyles();
  const picture = driftPicture(row);
  if (!picture) return null;
  const { listed, fresh, reading, marks } = picture;
  const sign = reading.isOff ? (reading.at > 0.5 ? SIGNS.right : SIGNS.left) : SIGNS.here;
  const at = { left: percent(reading.at) };
  return (
    <figure className={styles.figure} role="img" aria-label={picture.text}>
      {[{ name: "listed", span: listed }, ...(fresh ? [{ name: "new", span: fresh }] : [])].map(({ name, span }) => (
        <div key={name}>
          <Named name={name} text={span.text} />
          <div className={styles.scale}>
            <div className={styles.reading} style={at} />
            <div className={styles.span} style={{ left: percent(span.min), right: percent(1 - span.max) }}>
              <div className={mergeClasses(styles.bar, name === "new" && styles.fresh)} />
            </div>
          </div>
        </div>
      ))}
      <Named name="reads" text={`${reading.text}${reading.isOff ? ", off this scale" : ""}`} />
      <div className={styles.scale}>
        <span className={styles.sign} style={at}>
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
            <path d={sign} fill="none" stroke="currentColor" strokeWidth="2" />
          </svg>
        </span>
      </div>
      <div className={styles.axis}>
        {marks.map((mark) => (
          <span key={mark.text}>
            <span className={styles.tick} style={{ left: percent(mark.at) }} />
            <span className={styles.figureText} style={{ left: percent(mark.at) }}>
              {mark.text}
            </span>
          </span>
        ))}
      </div>
    </figure>
  );
}

function Named({ name, text }: { name: string; text: string }) {
  const styles = useStyles();
  return (
    <div className={styles.line}>
      <span className={styles.name}>{name}</span>
      <span>{text}</span>
    </div>
  );
}
