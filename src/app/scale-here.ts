import { drawOver, type OpensPicture } from '../store/pictures/scaled';

/** A picture opened and drawn by the page itself: where a worker has nothing to draw on. */
export const openImage: OpensPicture = async (file) => {
  const image = new Image();
  image.src = URL.createObjectURL(file);
  const close = () => URL.revokeObjectURL(image.src);
  try {
    await image.decode();
  } catch (error) {
    close();
    throw error;
  }
  return { wide: image.naturalWidth, high: image.naturalHeight, close, drawn: drawnBy(image) };
};

const drawnBy = (image: HTMLImageElement) => (wide: number, high: number) => {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [wide, high];
  drawOver(canvas.getContext('2d'), image, [wide, high]);
  return (quality: number): Promise<Blob> =>
    new Promise((done, fail) => {
      const asked = (blob: Blob | null) =>
        blob ? done(blob) : fail(new DOMException('no picture', 'EncodingError'));
      canvas.toBlob(asked, 'image/jpeg', quality);
    });
};
