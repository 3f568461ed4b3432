import { Button, makeStyles, mergeClasses } from "@fluentui/react-components";
import { type RefObject, useEffect, useRef, useState } from "react";
import type { LinePlace, PagePictures } from "../../commands/previewList.js";
import { textOf } from "../bench.js";
import { Quiet, Row } from "../kit/Stack.js";
import { Frame, type StepThrough } from "./Frame.js";

const useStyles = makeStyles({
  page: { position: "relative" },
  picture: { display: "block", width: "100%", imageOrientation: "none", backgroundColor: "white" },
  place: {
    position: "absolute",
    padding: 0,
    border: "none",
    borderRadius: "2px",
    background: "none",
    cursor: "pointer",
    ":hover": { outline: "1px dashed #0E5F5B" },
  },
  doubt: { position: "absolute", borderBottom: "3px dashed #A4262C", pointerEvents: "none" },
  chosen: {
    outline: "3px solid #0E5F5B",
    backgroundColor: "rgba(14, 95, 91, 0.14)",
    ":hover": { outline: "3px solid #0E5F5B" },
  },
});

/** Air around the letters of a line, as a share of their height, so that its frame does not touch them. */
const AIR = 0.2;

/**
 * A page as it was given, with the place of each line: the chosen line is framed, and choosing a place chooses its line.
 * Words in doubt are underlined. At first so near that the line can be read, as a whole when asked.
 */
export function PageView(props: {
  pictures: PagePictures;
  places: readonly LinePlace[];
  chosen: LinePlace;
  doubts: readonly LinePlace[];
  choose: (line: number) => void;
  nameOf: (line: number) => string;
  step: StepThrough;
}) {
  const styles = useStyles();
  const { chosen } = props;
  const [isNear, setNear] = useState(true);
  const picture = usePicture(props.pictures, chosen.page);
  const { frame, page, zoom, settle } = useNearness(
    chosen,
    props.doubts.find(({ line }) => line === chosen.line),
    isNear,
  );
  if ("problem" in picture) return <Quiet>{picture.problem}</Quiet>;
  return (
    <>
      <Frame ref={frame} name={`Page ${chosen.page}`} step={props.step}>
        <div ref={page} className={styles.page} style={{ width: `${zoom * 100}%` }}>
          {picture.address && (
            <img
              className={styles.picture}
              src={picture.address}
              alt={`Page ${chosen.page} as given`}
              onLoad={settle}
            />
          )}
          {props.places
            .filter((place) => place.page === chosen.page)
            .map((place) => (
              <button
                key={place.line}
                type="button"
                className={mergeClasses(styles.place, place.line === chosen.line && styles.chosen)}
                style={boxOf(place)}
                tabIndex={-1}
                aria-pressed={place.line === chosen.line}
                aria-label={props.nameOf(place.line)}
                onClick={() => props.choose(place.line)}
              />
            ))}
          {props.doubts
            .filter((place) => place.page === chosen.page)
            .map((place) => (
              <span key={`${place.line} ${place.left}`} className={styles.doubt} style={boxOf(place)} />
            ))}
        </div>
      </Frame>
      <Row>
        <Button size="small" onClick={() => setNear(!isNear)}>
          {isNear ? "Show the whole page" : "Show the line near"}
        </Button>
        <Quiet>page {chosen.page}</Quiet>
      </Row>
    </>
  );
}

const percent = (ratio: number) => `${ratio * 100}%`;

function boxOf({ top, bottom, left, right }: LinePlace) {
  const air = (bottom - top) * AIR;
  return {
    top: percent(top - air),
    height: percent(bottom - top + 2 * air),
    left: percent(left),
    width: percent(right - left),
  };
}

/** A page's picture once it is drawn, or why it can't be. */
function usePicture(pictures: PagePictures, page: number): { address: string | null } | { problem: string } {
  const [picture, setPicture] = useState<{ address: string | null } | { problem: string }>({ address: null });
  useEffect(() => {
    let isOver = false;
    pictures.page(page).then(
      (address) => isOver || setPicture({ address }),
      (error) => isOver || setPicture({ problem: `The page can't be shown: ${textOf(error)}` }),
    );
    return () => {
      isOver = true;
    };
  }, [pictures, page]);
  return picture;
}

/** Pixels a line has to be high to be read at all, and to be read with ease. */
const LEGIBLE = 14;
const READABLE = 24;
const NEAREST = 8;

/** How near the page is looked at, and the chosen line brought to the middle of the frame, its word in doubt in view. */
function useNearness(chosen: LinePlace, doubt: LinePlace | undefined, isNear: boolean) {
  const frame = useRef<HTMLElement>(null);
  const page = useRef<HTMLDivElement>(null);
  const [zoom, setZoom] = useState(1);
  const [loaded, setLoaded] = useState(0);
  useEffect(() => {
    const [around, inner] = [frame.current, page.current];
    if (!around || !inner || loaded === 0) return;
    const wholeHeight = (inner.clientHeight / inner.clientWidth) * around.clientWidth;
    setZoom(isNear ? nearnessOf(chosen, wholeHeight) : 1);
  }, [chosen, isNear, loaded]);
  useEffect(() => {
    if (zoom > 0) bringToMiddle(frame, page, chosen, doubt);
  }, [chosen, doubt, zoom]);
  return { frame, page, zoom, settle: () => setLoaded((count) => count + 1) };
}

/** So near that the line can be read with ease, but no nearer than shows it from end to end as long as it is legible. */
function nearnessOf({ top, bottom, left, right }: LinePlace, wholeHeight: number): number {
  const height = (bottom - top) * wholeHeight;
  const wanted = Math.max(Math.min(READABLE / height, 0.92 / (right - left)), LEGIBLE / height);
  return Math.min(Math.max(wanted, 1), NEAREST);
}

/** Pixels left free beside what is brought into view. */
const MARGIN = 12;

function bringToMiddle(
  frame: RefObject<HTMLElement | null>,
  page: RefObject<HTMLElement | null>,
  { top, bottom, left }: LinePlace,
  doubt: LinePlace | undefined,
): void {
  const [around, inner] = [frame.current, page.current];
  if (!around || !inner) return;
  const middle = ((top + bottom) / 2) * inner.clientHeight;
  const start = left * inner.clientWidth - MARGIN;
  const behindDoubt = (doubt?.right ?? 0) * inner.clientWidth + MARGIN - around.clientWidth;
  around.scrollTo({ top: middle - around.clientHeight / 2, left: Math.max(0, start, behindDoubt) });
}
