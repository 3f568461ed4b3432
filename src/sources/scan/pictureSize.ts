const PNG_SIZE_AT = 16;
const FRAME_MARKERS = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Width and height of a picture in pixels. */
export type PictureSize = { readonly width: number; readonly height: number };

/**
 * The size of a PNG or JPEG picture, or null for other kinds.
 *
 * @see PNG specification, 11.2.2; ITU-T T.81, B.2.2
 */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes[0] === 0x89) {
    if (bytes.length < PNG_SIZE_AT + 8) return null;
    return { width: view.getUint32(PNG_SIZE_AT), height: view.getUint32(PNG_SIZE_AT + 4) };
  }
  if (bytes[0] !== 0xff) return null;
  for (let at = 2; at + 9 < bytes.length && bytes[at] === 0xff; at += 2 + view.getUint16(at + 2)) {
    if (FRAME_MARKERS(bytes[at + 1]!)) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
  }
  return null;
}
