import type { LongLists } from "../commands/longLists.js";
import type { PlanService, ReasonService } from "../commands/planBasket.js";
import type { ReadFile, ShowPages, UnderstandLines } from "../commands/previewList.js";
import type { ListedFunction } from "./functionListing.js";

/** What the pane needs beside a host, given by whoever starts it; what is missing is not offered. */
export type Services = {
  /** The time, for the log of readings. */
  readonly now: () => Date;
  /** Our cell functions, from their own metadata. */
  readonly functions: readonly ListedFunction[];
  /** Reads a file of any form as lines, away from the page's own thread. */
  readonly read: ReadFile;
  /** Finds out what the lines of a parts list mean, away from the page's own thread. */
  readonly understand: UnderstandLines;
  /** Reads vendors' lists and keeps the long ones, away from the page's own thread. */
  readonly lists: LongLists;
  /** The pages of a file as pictures. */
  readonly pages: ShowPages;
  /** Finds the cheapest plan; away from the page's own thread. */
  readonly plan: PlanService;
  /** Says why a plan is as it is; away from the page's own thread. */
  readonly planReasons: ReasonService;
  /** The page's own: Excel opens and saves by itself. */
  readonly openWorkbook: ((file: File) => Promise<void>) | null;
  readonly saveWorkbook: (() => Promise<void>) | null;
};
