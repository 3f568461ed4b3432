import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { memo, useEffect, useMemo, useState } from "react";
import { type Corrected, notTold } from "../../commands/bringInList.js";
import type { PagePictures, Source } from "../../commands/previewList.js";
import { counted } from "../../commands/step.js";
import type { CorrectedCells, DocumentReading } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet } from "../kit/Stack.js";
import { ChosenLine } from "./ChosenLine.js";
import { ListPreview } from "./ListPreview.js";
import { lineByLine } from "./lineByLine.js";
import { PageView } from "./PageView.js";
import { TextView } from "./TextView.js";

const useStyles = makeStyles({
  around: { containerType: "inline-size" },
  sides: {
    display: "flex",
    flexDirection: "column",
    gap: "12px",
    "@container (min-width: 620px)": { flexDirection: "row", alignItems: "start" },
  },
  side: {
    display: "flex",
    flexDirection: "column",
    gap: "8px",
    minWidth: 0,
    "@container (min-width: 620px)": { flex: "1 1 0" },
  },
  given: {
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    position: "sticky",
    top: 0,
    zIndex: 1,
    paddingBottom: "8px",
    backgroundColor: tokens.colorNeutralBackground1,
  },
});

/** The page or the text on one side, how it is understood on the other (below, in a narrow pane); either lights the other. */
export const SideBySide = memo(function SideBySide(props: {
  source: Source;
  file: File | null;
  reading: DocumentReading;
  corrected: Corrected;
  correct: (index: number, cells: CorrectedCells) => void;
}) {
  const styles = useStyles();
  const { source, reading } = props;
  const pictures = usePictures(source, props.file);
  const lines = useMemo(() => lineByLine(reading, props.corrected), [reading, props.corrected]);
  const [wanted, choose] = useState<number | null>(null);
  const at = Math.max(
    0,
    lines.findIndex(({ line, isUnsure }) => (wanted === null ? isUnsure : line.number === wanted)),
  );
  const chosen = lines[at]!;
  const place = source.places.find(({ line }) => line === chosen.line.number);
  const doubts = useMemo(() => source.doubtful.flatMap(({ place }) => place ?? []), [source]);
  const goTo = (to: number) => (lines[to] ? () => choose(lines[to]!.line.number) : null);
  const step = { before: goTo(at - 1), after: goTo(at + 1) };
  return (
    <div className={styles.around}>
      <div className={styles.sides}>
        <section className={mergeClasses(styles.side, styles.given)} aria-label="As it was given">
          {pictures && place ? (
            <PageView
              pictures={pictures}
              places={source.places}
              doubts={doubts}
              chosen={place}
              choose={choose}
              nameOf={(line) => `Line ${line}: ${source.lines[line - 1]?.text ?? ""}`}
              step={step}
            />
          ) : (
            <TextView lines={reading.lines} chosen={chosen.line.number} choose={choose} step={step} />
          )}
        </section>
        <div className={styles.side}>
          <ChosenLine understood={chosen} step={step} correct={props.correct} />
          {reading.questions.map((question) => (
            <strong key={question}>{question}</strong>
          ))}
          {notTold(reading.numbersWithoutValue).map((said) => (
            <strong key={said}>{said}</strong>
          ))}
          {source.doubtful.length > 0 && (
            <Quiet>
              {counted(source.doubtful.length, "word")} of the picture in doubt: compare the marked lines with it.
            </Quiet>
          )}
          <ListPreview
            title={`${counted(reading.parts.length, "part")} in ${counted(reading.lines.length, "line")}`}
            lines={lines}
            chosen={chosen.line.number}
            choose={choose}
          />
        </div>
      </div>
    </div>
  );
});

/** The pages of the file as pictures; null until they are there, and for a file without. */
function usePictures({ form }: Source, file: File | null): PagePictures | null {
  const { services } = useBench();
  const [pictures, setPictures] = useState<PagePictures | null>(null);
  useEffect(() => {
    let open: PagePictures | null = null;
    let isOver = false;
    void file?.arrayBuffer().then((bytes) => {
      if (isOver) return;
      open = services.pages(form, new Uint8Array(bytes));
      setPictures(open);
    });
    return () => {
      isOver = true;
      open?.close();
      setPictures(null);
    };
  }, [form, file, services]);
  return pictures;
}
