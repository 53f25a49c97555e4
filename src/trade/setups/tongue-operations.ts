import { cutterTape, markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import { offFence } from './lies';
import type { On } from './on';
import type { Operation } from './operation';
import { base, type Piece } from './part-pieces';
import { setupOf } from './setup';

/** What is cut away beside a tongue: one stop for both ends, no longer than the tongue may be. */
export function tonguesOf(part: Part, piece: Piece, tape: Tape): readonly Operation[] {
  const { tongues = [] } = part;
  return tongues.map(({ end, long, shoulder, face }) => {
    const figure = markAt(long, cutterTape(tape), 'floor');
    const named = tongues.length > 1 ? 'each' : end;
    const on: On = { at: 'end', named };
    return {
      ...base(part, piece, `tongue~${end}`),
      what: 'rabbet',
      which: { is: 'tongue', end },
      setup: setupOf({ machine: 'rabbet', height: shoulder, sets: 'exposed', figure, on }),
      figure: figure.value,
      fits: part.stuff,
      placing: offFence(face, { at: 'end', named: end }),
    };
  });
}
