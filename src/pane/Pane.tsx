import { MessageBar, MessageBarBody, makeStyles, tokens } from "@fluentui/react-components";
import { type ComponentType, useState } from "react";
import { overviewOf } from "../commands/overview.js";
import { STANDING_NOTE } from "../core/index.js";
import { useBench } from "./bench.js";
import { RulesWatch } from "./card/RulesWatch.js";
import { Head } from "./Head.js";
import { BenchScreen } from "./screens/BenchScreen.js";
import { FitScreen } from "./screens/FitScreen.js";
import { FunctionsScreen } from "./screens/FunctionsScreen.js";
import { ListScreen } from "./screens/ListScreen.js";
import { OrderScreen } from "./screens/OrderScreen.js";
import { PairsScreen } from "./screens/PairsScreen.js";
import { PapersScreen } from "./screens/PapersScreen.js";
import { PartsScreen } from "./screens/PartsScreen.js";
import { RulesScreen } from "./screens/RulesScreen.js";
import { SetScreen } from "./screens/SetScreen.js";
import { VendorsScreen } from "./screens/VendorsScreen.js";
import { WelcomeScreen } from "./screens/WelcomeScreen.js";
import { type Screen, type ScreenProps, whatNext } from "./screens.js";
import { setInHand } from "./useSet.js";

const useStyles = makeStyles({
  pane: {
    display: "flex",
    flexDirection: "column",
    gap: "12px",
    padding: "12px",
    minWidth: 0,
    boxSizing: "border-box",
    minHeight: "100%",
    backgroundColor: tokens.colorNeutralBackground1,
    fontVariantNumeric: "tabular-nums",
    overflowWrap: "anywhere",
  },
  main: { display: "flex", flexDirection: "column", gap: "12px", flexGrow: 1 },
  note: {
    color: tokens.colorNeutralForeground2,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingTop: "8px",
  },
});

const SCREEN_OF: Readonly<Record<Screen, ComponentType<ScreenProps>>> = {
  list: ListScreen,
  parts: PartsScreen,
  bench: BenchScreen,
  vendors: VendorsScreen,
  order: OrderScreen,
  fit: FitScreen,
  papers: PapersScreen,
  set: SetScreen,
  functions: FunctionsScreen,
  rules: RulesScreen,
  pairs: PairsScreen,
};

/** The side pane: where am I, what is open, what next; below it one screen; at its foot the standing note. */
export function Pane() {
  const styles = useStyles();
  const bench = useBench();
  const [screen, go] = useState<Screen | null>(null);
  const set = setInHand(bench);
  const overview = overviewOf(bench.book, set?.short ?? null);
  const isNew = bench.book.parts === null && screen === null;
  const shown = screen ?? whatNext(overview).screen;
  const Shown = isNew ? WelcomeScreen : SCREEN_OF[shown];
  return (
    <div className={styles.pane}>
      <Head set={set} overview={overview} shown={isNew ? null : shown} go={go} />
      <Said />
      <RulesWatch />
      <section className={styles.main} aria-label="Screen">
        <Shown go={go} />
      </section>
      <footer className={styles.note}>{STANDING_NOTE}</footer>
    </div>
  );
}

/** The last thing that was done or went wrong, read out by screen readers. */
function Said() {
  const { message } = useBench();
  return (
    <div aria-live="polite">
      {message && (
        <MessageBar intent={message.kind === "problem" ? "error" : "success"} layout="multiline">
          <MessageBarBody>{message.text}</MessageBarBody>
        </MessageBar>
      )}
    </div>
  );
}
