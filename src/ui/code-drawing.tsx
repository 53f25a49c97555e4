import { correction, generate, mode } from 'lean-qr';
import { useLayoutEffect, useRef } from 'preact/hooks';
import './code-drawing.css';

/** Squares left white round a code. Source: ISO/IEC 18004:2015, 5.3.8: four modules wide (from memory). */
const quiet = 4;

type CodeProps = {
  /** Of the 45 characters that codes write shortest. */
  readonly text: string;
  readonly label: string;
};

/** A code as large as its box allows, black on white in every finish: a camera reads nothing else as well. */
export function CodeDrawing({ text, label }: CodeProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const at = canvas.current;
    if (!at) return;
    const refit = () => draw(at, text);
    refit();
    addEventListener('resize', refit);
    return () => removeEventListener('resize', refit);
  }, [text]);
  return (
    <div class="codebox">
      <canvas ref={canvas} role="img" aria-label={label} />
    </div>
  );
}

/** Each square is a whole number of the screen's own points: none is wider than its neighbour. */
function draw(canvas: HTMLCanvasElement, text: string): void {
  const code = generate(text, { modes: [mode.alphaNumeric], minCorrectionLevel: correction.M });
  code.toCanvas(canvas, { on: [0, 0, 0], off: [255, 255, 255], pad: quiet });
  const box = canvas.parentElement;
  const room = Math.min(box?.clientWidth ?? 0, box?.clientHeight ?? 0) * devicePixelRatio;
  const across = Math.max(1, Math.floor(room / canvas.width)) * canvas.width;
  canvas.style.width = `${across / devicePixelRatio}px`;
  canvas.style.height = canvas.style.width;
}
