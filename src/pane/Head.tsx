import { Button, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { Overview } from "../commands/overview.js";
import type { ProjectsRow } from "../core/index.js";
import { SCREEN_WORDS, SCREENS, type Screen, whatNext } from "./screens.js";

const useStyles = makeStyles({
  head: { display: "flex", flexDirection: "column", gap: "8px" },
  line: { display: "flex", alignItems: "center", gap: "4px", flexWrap: "wrap" },
  name: { fontSize: "18px", lineHeight: "24px", fontWeight: 600, margin: 0, flexGrow: 1 },
  tabs: { display: "grid", gridTemplateColumns: "repeat(4, minmax(0, 1fr))", gap: "4px" },
  tab: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    padding: "4px 6px",
    minWidth: 0,
    minHeight: "48px",
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
    font: "inherit",
    cursor: "pointer",
    textAlign: "left",
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  here: {
    border: `1px solid ${tokens.colorBrandForeground1}`,
    boxShadow: `inset 0 -3px 0 ${tokens.colorBrandForeground1}`,
  },
  tabName: { fontWeight: 600, fontSize: "14px", lineHeight: "20px" },
  count: { color: tokens.colorNeutralForeground2, fontSize: "14px", lineHeight: "18px", overflowWrap: "normal" },
});

type HeadProps = {
  readonly set: ProjectsRow | null;
  readonly overview: Overview;
  readonly shown: Screen | null;
  readonly go: (screen: Screen) => void;
};

/** Where am I, what is open, what next: always on screen, always clickable. */
export function Head({ set, overview, shown, go }: HeadProps) {
  const styles = useStyles();
  const next = whatNext(overview);
  return (
    <header className={styles.head}>
      <div className={styles.line}>
        <h1 className={styles.name}>{set?.name ?? "Underchassis"}</h1>
        {set && (
          <Button size="small" onClick={() => go("set")}>
            Set card
          </Button>
        )}
        <Button size="small" appearance="subtle" onClick={() => go("functions")}>
          Functions
        </Button>
      </div>
      {overview.parts > 0 && (
        <div>
          {overview.parts} parts: {overview.decided} decided, {overview.inHand} in hand, {overview.fitted} fitted
        </div>
      )}
      <nav className={styles.tabs} aria-label="Screens">
        {SCREENS.map((screen) => (
          <Tab key={screen} isHere={shown === screen} onClick={() => go(screen)} {...tabWords(screen, overview)} />
        ))}
        <Tab isHere={shown === "rules"} onClick={() => go("rules")} name="Rules" count="yours to edit" />
      </nav>
      <div className={styles.line}>
        <span>next: {next.text}</span>
        {next.screen !== shown && (
          <Button size="small" onClick={() => go(next.screen)}>
            Go
          </Button>
        )}
      </div>
    </header>
  );
}

const tabWords = (screen: (typeof SCREENS)[number], overview: Overview) => ({
  name: SCREEN_WORDS[screen].name,
  count: SCREEN_WORDS[screen].count(overview),
});

function Tab(props: { name: string; count: string; isHere: boolean; onClick: () => void }) {
  const styles = useStyles();
  return (
    <button
      type="button"
      className={mergeClasses(styles.tab, props.isHere && styles.here)}
      aria-current={props.isHere ? "page" : undefined}
      onClick={props.onClick}
    >
      <span className={styles.tabName}>{props.name}</span>
      <span className={styles.count}>{props.count}</span>
    </button>
  );
}
