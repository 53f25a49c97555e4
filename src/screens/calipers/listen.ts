import { type Burst, hear } from '../../ui/caliper';
import { type InHand, inHand, type TypedReading } from '../../ui/in-hand';
import type { Said } from './words';

type Ears = {
  /** What the calipers send; undefined when it is the unit of the tape. */
  readonly unit: () => TypedReading['unit'];
  readonly say: (said: Said | undefined) => void;
};

/**
 * Hears keys before anything else does. Strokes go where they always went, so that typing by hand is as it was; when
 * their Enter shows that calipers typed them, the Enter goes no further and the reading is put in its place.
 */
export function listen(root: Document, { unit, say }: Ears): () => void {
  let burst: Burst | undefined;
  let field: InHand | undefined;
  let put: ReturnType<InHand['begin']> | undefined;

  function stroke(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { key, timeStamp: at, repeat } = event;
    const heard = hear(burst, { key, at, repeat });
    burst = heard.burst;
    if (heard.began) {
      say(undefined);
      field = inHand();
      put = field?.begin();
    }
    const isElsewhere = event.target instanceof HTMLInputElement && event.target !== field?.field?.();
    if (heard.reading === undefined || isElsewhere) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const reading = { text: heard.reading.replace('+', ''), unit: unit() };
    say({ reading, came: put?.(reading) ?? 'nowhere' });
  }

  const tapped = () => say(undefined);
  root.addEventListener('keydown', stroke, { capture: true });
  root.addEventListener('pointerdown', tapped, { capture: true });
  return () => {
    root.removeEventListener('keydown', stroke, { capture: true });
    root.removeEventListener('pointerdown', tapped, { capture: true });
  };
}
