import { forDrawing } from '../../length/length';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import type { Placing } from '../../trade/setups/placing';
import { opposite, towardOf } from '../../trade/setups/turn';
import type { OnMachine } from '../../ui/piece-on-machine';

/**
 * How a piece lies on its machine, for the picture: made of the same answer as the words. Nothing where it is not known
 * which side of the cut the stop, fence or guide is, or where nothing is set to a figure.
 */
export function laidOut(placing: Placing, op: Operation, plan: Plan): OnMachine | undefined {
  const part = plan.parts.find((p) => p.id === op.part);
  const { figure } = op.setup;
  const { stop } = placing;
  if (!part || !figure || !stop) return undefined;
  if (placing.marked) return laidForRow(placing, op, part);
  const teeth = placing.measured ? (op.groove?.teeth ?? op.figure) : figure.value;
  const across = op.what === 'rip' || op.what === 'along' || op.what === 'rabbet';
  const whole = forDrawing((across ? part.width : part.length).sum.value);
  const band = bandOf(placing);
  if (whole <= 0 || !band) return undefined;
  return {
    block: stop,
    guided: placing.measured !== undefined,
    ...band,
    fence: placing.fence,
    // a guide stands off the teeth by the shoe or the base
    blade: Math.min(1, Math.max(0, forDrawing(teeth) / whole)),
  };
}

/** A row of holes runs along the piece, so far from its front edge; nothing is on a stop. */
function laidForRow(placing: Placing, op: Operation, part: Part): OnMachine | undefined {
  const band = bandOf(placing);
  const deep = forDrawing(part.width.sum.value);
  if (!band || !placing.stop || deep <= 0) return undefined;
  const row = Math.min(1, forDrawing(op.figure) / deep);
  return { block: placing.stop, ...band, fence: placing.fence, blade: 0, row };
}

/** What the dark band is, so that pieces that mirror each other differ by where it lies, not by its word. */
const drawn: readonly string[] = ['front', 'bottom', 'left'];

/** The edge that is named, and where it lies seen from above. */
function bandOf({
  fence,
  onFence,
  leads,
  toYou,
  measured,
}: Placing): Pick<OnMachine, 'band' | 'word'> | undefined {
  const near = toYou ?? (fence === 'near' ? onFence : undefined);
  const away = near ? undefined : fence === 'far' ? onFence : leads;
  const side = near ?? away;
  const beside = onFence ?? measured;
  if (!side) return beside && { band: 'block', word: beside.named };
  const toward = towardOf(side.named);
  const here = near ? 'near' : 'far';
  if (!toward || drawn.includes(toward)) return { band: here, word: side.named };
  return { band: near ? 'far' : 'near', word: opposite(toward) };
}
