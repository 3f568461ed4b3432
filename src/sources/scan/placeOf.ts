import type { Bbox } from "tesseract.js";
import type { LinePlace } from "../source.js";
import type { PictureSize } from "./pictureSize.js";

/** Where a box of dots stands on its picture. */
export const placeOf = ({ x0, x1, y0, y1 }: Bbox, line: number, { width, height }: PictureSize): LinePlace => ({
  line,
  page: 1,
  top: y0 / height,
  bottom: y1 / height,
  left: x0 / width,
  right: x1 / width,
});
