import { headOf, mostEdge, mostPixels, type ScaleError } from '../job/picture-head';
import { err, ok, type Result } from '../length/result';
import type { Scaled } from '../store/pictures/files';

/** The longer edge of what is kept, pixels, and about how many bytes it may take. */
const longEdge = 1600;
const enough = 300 * 1024;
const qualities = [0.82, 0.7, 0.55, 0.4];
/** A picture that stays too large is made smaller by so much at a time. */
const smaller = 0.75;

/**
 * A picture scaled down and written anew as a JPEG of its pixels alone: nothing else of the file is kept, neither where
 * it was taken nor what was hung on it. Its head is read first, and what is too large is never decoded.
 */
export async function scaled(file: Blob): Promise<Result<Scaled, ScaleError>> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const head = headOf(bytes);
  if (!head.ok) return head;
  const { type, wide, high } = head.value;
  if (wide * high > mostPixels || Math.max(wide, high) > mostEdge)
    return err({ code: 'too-many-pixels', wide, high });
  const large = Math.max(wide, high) > longEdge;
  const how: ImageBitmapOptions = large ? { resizeWidth: longEdge, resizeQuality: 'high' } : {};
  try {
    // named for what its head says: nothing else is made of it
    const bitmap = await createImageBitmap(new Blob([bytes], { type: `image/${type}` }), how);
    const done = await written(bitmap);
    bitmap.close();
    return ok(done);
  } catch {
    return err({ code: 'not-decoded' });
  }
}

async function written(bitmap: ImageBitmap): Promise<Scaled> {
  for (let edge = Math.min(longEdge, Math.max(bitmap.width, bitmap.height)); ; edge *= smaller) {
    const drawn = drawnAt(bitmap, edge / Math.max(bitmap.width, bitmap.height));
    for (const quality of qualities) {
      const blob = await drawn.convertToBlob({ type: 'image/jpeg', quality });
      if (blob.size > enough) continue;
      return { bytes: await blob.arrayBuffer(), wide: drawn.width, high: drawn.height };
    }
  }
}

function drawnAt(bitmap: ImageBitmap, scale: number): OffscreenCanvas {
  const size = (pixels: number) => Math.max(1, Math.round(pixels * scale));
  const canvas = new OffscreenCanvas(size(bitmap.width), size(bitmap.height));
  const drawing = canvas.getContext('2d');
  if (!drawing) throw new DOMException('no canvas', 'NotSupportedError');
  drawing.fillStyle = '#fff'; // what is clear comes out white, as paper
  drawing.fillRect(0, 0, canvas.width, canvas.height);
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return canvas;
}
