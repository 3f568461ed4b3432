import {
  createContext,
  type ReactNode,
  type RefObject,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from "react";
import { type Book, openBook } from "../commands/book.js";
import { doesSomething, doStep, type Step } from "../commands/step.js";
import type { Host, Place } from "../hosts/host.js";
import type { Services } from "./services.js";

/** What every screen works with: the workbook as it stands, where the user is, and how to change something. */
export type Bench = {
  readonly host: Host;
  readonly services: Services;
  readonly book: Book;
  readonly place: Place;
  /** Says what went wrong, or what was done; null says nothing. */
  readonly say: (message: Message | null) => void;
  readonly message: Message | null;
  /** Does a step and reads the workbook anew. */
  readonly run: (step: Step, overwriteAgreed?: boolean) => Promise<void>;
  readonly reload: () => Promise<void>;
  /** Which set's stops were ticked, and when a hand was last at it. */
  readonly sitting: RefObject<Sitting>;
};

/** A sitting at the bench: `last` in milliseconds. */
export type Sitting = { set: string | null; last: number };

/** One sentence for the user. */
export type Message = { readonly kind: "problem" | "done"; readonly text: string };

const BenchContext = createContext<Bench | null>(null);

/** The bench that the pane works at. */
export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error("useBench stands outside of WithBench");
  return bench;
}

/** How long the sheet has to be quiet before the pane reads it anew, in milliseconds. */
const QUIET = 120;

/** Reads the workbook, follows its changes and the selection, and hands both to the screens. */
export function WithBench(props: { host: Host; services: Services; waiting: ReactNode; children: ReactNode }) {
  const { host, services } = props;
  const [message, say] = useState<Message | null>(null);
  const { book, reload } = useBook(host, say);
  const place = usePlace(host);
  const sitting = useRef<Sitting>({ set: null, last: 0 });
  const run = useCallback(
    async (step: Step, overwriteAgreed = false) => {
      if (!doesSomething(step)) return;
      try {
        await doStep(host, step, overwriteAgreed);
        say({ kind: "done", text: [`Done: ${step.name}.`, ...step.notes].join(" ") });
      } catch (error) {
        say({ kind: "problem", text: textOf(error) });
      }
      await reload();
    },
    [host, reload],
  );
  const bench = useMemo(
    () => (book && place ? { host, services, book, place, say, message, run, reload, sitting } : null),
    [host, services, book, place, message, run, reload],
  );
  if (!bench) return props.waiting;
  return <BenchContext.Provider value={bench}>{props.children}</BenchContext.Provider>;
}

/** An error as a sentence. */
export const textOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function useBook(host: Host, say: (message: Message | null) => void) {
  const [book, setBook] = useState<Book | null>(null);
  const reload = useCallback(async () => {
    try {
      setBook(await openBook(host));
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
  }, [host, say]);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const later = () => {
      clearTimeout(timer);
      timer = setTimeout(reload, QUIET);
    };
    const stop = host.onChange(later);
    void reload();
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [host, reload]);
  return { book, reload };
}

function usePlace(host: Host): Place | null {
  const [place, setPlace] = useState<Place | null>(null);
  useEffect(() => {
    void host.selection().then(setPlace);
    return host.onSelect(setPlace);
  }, [host]);
  return place;
}
