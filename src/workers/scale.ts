import { drawOver, longEdge, type OpensPicture } from '../store/pictures/scaled';

/** A picture opened and drawn off the page's thread. */
export const openBitmap: OpensPicture = async (file, large) => {
  const how: ImageBitmapOptions = large ? { resizeWidth: longEdge, resizeQuality: 'high' } : {};
  const bitmap = await createImageBitmap(file, how);
  return {
    wide: bitmap.width,
    high: bitmap.height,
    drawn: (wide, high) => {
      const canvas = new OffscreenCanvas(wide, high);
      drawOver(canvas.getContext('2d'), bitmap, [wide, high]);
      return (quality) => canvas.convertToBlob({ type: 'image/jpeg', quality });
    },
    close: () => bitmap.close(),
  };
};
