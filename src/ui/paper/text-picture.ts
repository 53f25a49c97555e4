/** A text drawn by the phone's own fonts. Millimetres; `below`: how far it hangs under its base line. */
export type Drawn = {
  readonly pixels: ImageData;
  readonly wide: number;
  readonly high: number;
  readonly below: number;
};

/** Points in a millimetre: 300 to the inch. */
const points = 300 / 25.4;

/** A text a PDF's own fonts cannot write, as a picture: capitals `high` mm high. */
export function pictureOf(text: string, high: number, bold?: true): Drawn {
  const size = (high / 0.718) * points;
  const face = `${bold ? 'bold ' : ''}${size}px sans-serif`;
  const measure = contextOf(1, 1);
  measure.font = face;
  const wide = Math.max(1, Math.ceil(measure.measureText(text).width));
  const [above, below] = [Math.ceil(size), Math.ceil(size * 0.3)];
  const draw = contextOf(wide, above + below);
  draw.fillStyle = '#fff';
  draw.fillRect(0, 0, wide, above + below);
  draw.fillStyle = '#000';
  draw.font = face;
  draw.fillText(text, 0, above);
  return {
    pixels: draw.getImageData(0, 0, wide, above + below),
    wide: wide / points,
    high: (above + below) / points,
    below: below / points,
  };
}

function contextOf(wide: number, high: number): CanvasRenderingContext2D {
  const canvas = document.createElement('canvas');
  canvas.width = wide;
  canvas.height = high;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas to draw on');
  return context;
}
