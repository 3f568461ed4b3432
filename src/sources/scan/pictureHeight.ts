const PNG_HEIGHT_AT = 20;
const FRAME_MARKERS = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/**
 * The height of a PNG or JPEG picture in pixels, or null for other kinds.
 *
 * @see PNG specification, 11.2.2; ITU-T T.81, B.2.2
 */
export function pictureHeight(bytes: Uint8Array): number | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes[0] === 0x89) return bytes.length >= 24 ? view.getUint32(PNG_HEIGHT_AT) : null;
  if (bytes[0] !== 0xff) return null;
  for (let at = 2; at + 9 < bytes.length && bytes[at] === 0xff; at += 2 + view.getUint16(at + 2)) {
    if (FRAME_MARKERS(bytes[at + 1]!)) return view.getUint16(at + 5);
  }
  return null;
}
