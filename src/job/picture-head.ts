import { err, ok, type Result } from '../length/result';

/** What a picture's file says of itself before anything of it is decoded. */
type PictureHead = {
  readonly type: 'jpeg' | 'png' | 'webp' | 'heic';
  readonly wide: number;
  readonly high: number;
};

type HeadError =
  /** None of the kinds that are taken. */
  | { readonly code: 'no-picture' }
  /** It ends before the picture does. */
  | { readonly code: 'cut-short' };

export type ScaleError =
  | HeadError
  /** More pixels, or a longer edge, than is decoded here. */
  | { readonly code: 'too-many-pixels'; readonly wide: number; readonly high: number }
  /** This browser cannot decode it: it knows no HEIC, or what the head promises is not there. */
  | { readonly code: 'not-decoded'; readonly type: PictureHead['type'] };

const noPicture = err({ code: 'no-picture' } as const);
const cutShort = err({ code: 'cut-short' } as const);

/**
 * Reads the kind of a picture and its pixels off its first bytes, and that it is whole where the kind says so. Nothing
 * is decoded: a picture of a million pixels a side costs no more than a small one.
 */
export function headOf(bytes: Uint8Array): Result<PictureHead, HeadError> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    if (view.getUint16(0) === 0xffd8) return jpeg(view);
    if (view.getUint32(0) === 0x89504e47 && view.getUint32(4) === 0x0d0a1a0a) return png(view);
    if (word(view, 0) === 'RIFF' && word(view, 8) === 'WEBP') return webp(view);
    if (word(view, 4) === 'ftyp' && heics.includes(word(view, 8))) return heic(view);
    return noPicture;
  } catch {
    // read over its end: a JPEG is told by its first two bytes, the others by twelve
    const isKnown = view.byteLength >= 12 || (view.byteLength > 2 && view.getUint16(0) === 0xffd8);
    return isKnown ? cutShort : noPicture;
  }
}

const word = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(at + k)));

const sized = (type: PictureHead['type'], wide: number, high: number): Result<PictureHead, HeadError> =>
  wide > 0 && high > 0 ? ok({ type, wide, high }) : noPicture;

/** Markers one after the other up to the frame, then to the scan; the scan ends with FF D9. ITU-T T.81. */
function jpeg(view: DataView): Result<PictureHead, HeadError> {
  let size: readonly [number, number] | undefined;
  for (let at = 2; ; ) {
    if (view.getUint8(at) !== 0xff) return noPicture;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (isFrame(marker)) {
      size = [view.getUint16(at + 7), view.getUint16(at + 5)];
      at += 2 + view.getUint16(at + 2);
    } else if (marker === 0xda)
      return size && ends(view, at) ? sized('jpeg', ...size) : size ? cutShort : noPicture;
    else at += 2 + view.getUint16(at + 2);
  }
}

/** SOF0 to SOF15, without tables that have numbers among them. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Inside a scan no FF is followed by D9: what ends it stands after the scan alone. */
function ends(view: DataView, scan: number): boolean {
  for (let at = view.byteLength - 2; at > scan; at -= 1)
    if (view.getUint8(at) === 0xff && view.getUint8(at + 1) === 0xd9) return true;
  return false;
}

/** ISO/IEC 15948: IHDR comes first, IEND last. */
function png(view: DataView): Result<PictureHead, HeadError> {
  if (word(view, 12) !== 'IHDR') return noPicture;
  let at = 8;
  while (word(view, at + 4) !== 'IEND') at += 12 + view.getUint32(at);
  return sized('png', view.getUint32(16), view.getUint32(20));
}

/** RFC 9649. */
function webp(view: DataView): Result<PictureHead, HeadError> {
  if (view.getUint32(4, true) + 8 > view.byteLength) return cutShort;
  const kind = word(view, 12);
  const three = (at: number) => view.getUint16(at, true) + (view.getUint8(at + 2) << 16);
  if (kind === 'VP8X') return sized('webp', three(24) + 1, three(27) + 1);
  if (kind === 'VP8L') {
    const bits = view.getUint32(21, true);
    return sized('webp', (bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1);
  }
  return kind === 'VP8 '
    ? sized('webp', view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff)
    : noPicture;
}

const heics = ['heic', 'heix', 'mif1', 'heim', 'heis', 'hevc'];

/** So far into a file its boxes are looked for. */
const headMost = 1 << 20;

/** ISO/IEC 23008-12: every picture in the file says its size in an `ispe`; the greatest of them counts. */
function heic(view: DataView): Result<PictureHead, HeadError> {
  let [wide, high] = [0, 0];
  for (let at = 12; at < Math.min(view.byteLength - 16, headMost); at += 1) {
    if (view.getUint32(at) !== 0x69737065) continue;
    wide = Math.max(wide, view.getUint32(at + 8));
    high = Math.max(high, view.getUint32(at + 12));
  }
  return wide > 0 ? sized('heic', wide, high) : cutShort;
}

/** Most bytes of a file that is looked at, most pixels of it, and most along one edge. */
export const mostFileBytes = 60 * 1024 * 1024;
export const mostPixels = 64_000_000;
export const mostEdge = 20_000;
