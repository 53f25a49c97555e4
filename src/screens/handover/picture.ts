/** Longest side of a picture that is looked at, pixels: a code's smallest square is then some six of them. */
const mostLive = 960;
const mostPhoto = 1800;

type Part = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** What the square on the screen shows of the camera, as a picture; undefined before there is any. */
export function frameOf(video: HTMLVideoElement): ImageData | undefined {
  const { videoWidth: w, videoHeight: h } = video;
  if (w === 0 || h === 0 || video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) return undefined;
  const side = Math.min(w, h);
  return pixels(video, { x: (w - side) / 2, y: (h - side) / 2, width: side, height: side }, mostLive);
}

/** A photo as a picture; undefined when the file is none. */
export async function photoOf(file: Blob): Promise<ImageData | undefined> {
  try {
    const photo = await createImageBitmap(file);
    const picture = pixels(photo, { x: 0, y: 0, width: photo.width, height: photo.height }, mostPhoto);
    photo.close();
    return picture;
  } catch {
    return undefined;
  }
}

function pixels(from: CanvasImageSource, { x, y, width, height }: Part, most: number): ImageData | undefined {
  const scale = Math.min(1, most / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  context?.drawImage(from, x, y, width, height, 0, 0, canvas.width, canvas.height);
  return context?.getImageData(0, 0, canvas.width, canvas.height);
}
