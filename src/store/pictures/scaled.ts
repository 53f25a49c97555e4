import { headOf, mostEdge, mostPixels, type ScaleError } from '../../job/picture-head';
import { err, ok, type Result } from '../../length/result';
import type { Scaled } from './files';

/** A picture that is open, to be drawn smaller. Pixels. */
type OpenPicture = {
  readonly wide: number;
  readonly high: number;
  /** Draws it at a size; then a JPEG of that by its quality, as often as is asked for. */
  readonly drawn: (wide: number, high: number) => (quality: number) => Promise<Blob>;
  readonly close: () => void;
};

/** Opens a picture; throws where the browser cannot decode it. @param large larger than anything that is kept */
export type OpensPicture = (file: Blob, large: boolean) => Promise<OpenPicture>;

/** The longer edge of what is kept, pixels, and about how many bytes it may take. */
export const longEdge = 1600;
const enough = 300 * 1024;
const qualities = [0.82, 0.7, 0.55, 0.4];
/** A picture that stays too large is made smaller by so much at a time. */
const smaller = 0.75;

/**
 * A picture scaled down and written anew as a JPEG of its pixels alone: nothing else of the file is kept, neither where
 * it was taken nor what was hung on it. Its head is read first, and what is too large is never decoded.
 */
export async function scaledBy(opens: OpensPicture, file: Blob): Promise<Result<Scaled, ScaleError>> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const head = headOf(bytes);
  if (!head.ok) return head;
  const { type, wide, high } = head.value;
  const edge = Math.max(wide, high);
  if (wide * high > mostPixels || edge > mostEdge) return err({ code: 'too-many-pixels', wide, high });
  try {
    // named for what its head says: nothing else is made of it
    const open = await opens(new Blob([bytes], { type: `image/${type}` }), edge > longEdge);
    try {
      return ok(await written(open));
    } finally {
      open.close();
    }
  } catch {
    return err({ code: 'not-decoded', type });
  }
}

async function written({ wide, high, drawn }: OpenPicture): Promise<Scaled> {
  const longer = Math.max(wide, high);
  for (let edge = Math.min(longEdge, longer); ; edge *= smaller) {
    const scaled = (pixels: number) => Math.max(1, Math.round((pixels * edge) / longer));
    const size = { wide: scaled(wide), high: scaled(high) };
    const jpeg = drawn(size.wide, size.high);
    for (const quality of qualities) {
      const blob = await jpeg(quality);
      if (blob.size <= enough) return { bytes: await blob.arrayBuffer(), ...size };
    }
  }
}

type Drawing = CanvasDrawImage & CanvasFillStrokeStyles & CanvasRect & CanvasImageSmoothing;

/** Draws a picture over all of a canvas; what is clear comes out white, as paper. */
export function drawOver(
  drawing: Drawing | null,
  picture: CanvasImageSource,
  [wide, high]: readonly [number, number],
): void {
  if (!drawing) throw new DOMException('no canvas', 'NotSupportedError');
  drawing.fillStyle = '#fff';
  drawing.fillRect(0, 0, wide, high);
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(picture, 0, 0, wide, high);
}
