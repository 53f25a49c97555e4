import type { Length } from '../../length/length';
import type { Built } from '../../trade/carcass/case';
import { rockOf, rockOver } from '../../trade/shelves/template';
import { unitInHand } from '../../ui/unit-in-hand';
import { exactly as w } from '../shared/exact-words';
import * as words from './built-words';
import { Places, type RowsProps } from './opening-rows';

/** The four pins of a shelf as they were measured, and the gap that leaves under one of them. */
export function FourPins({ opening, built, onOpen }: RowsProps) {
  const rock = rockIn(built);
  const over = rock && rockOver(rock, unitInHand());
  return (
    <section class="opening" aria-label={opening.name}>
      <div class="sechead">
        <h2 class="sec">{opening.name}</h2>
      </div>
      <p class="pad-x note">{words.fourPins}</p>
      <Places opening={opening} built={built} onOpen={onOpen} />
      {rock && over && (
        <p class="pad-x note">{over.n === 0n ? words.steady(w(rock)) : words.rocks(w(rock), w(over))}</p>
      )}
    </section>
  );
}

function rockIn({ frontA, frontB, backA, backB }: Built): Length | undefined {
  if (!frontA || !frontB || !backA || !backB) return undefined;
  return rockOf({ frontLeft: frontA, frontRight: frontB, backLeft: backA, backRight: backB });
}
