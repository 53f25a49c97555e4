import { editInside } from '../../job/edits';
import type { Case, Inside } from '../../trade/carcass/case';
import type { Ask } from '../shared/ask';
import * as words from './ask-words';
import { borers, holders } from './loose-words';
import { insideTitle } from './sentence-words';

/** What holds loose shelves, and what their holes are bored with. */
export const looseHeld = (c: Case, i: Inside): Ask => ({
  as: 'choice',
  title: insideTitle(c, i.id, 'heldBy'),
  now: i.heldBy ?? '',
  choices: holders,
  save: (by) => editInside(c.id, i.id, heldOtherwise(i, by === '' ? undefined : (by as Inside['heldBy']))),
});

/** Holes and strips have their own figures: those of the one lie aside while the other holds the shelves. */
function heldOtherwise(i: Inside, heldBy: Inside['heldBy']): Partial<Inside> {
  if ((i.heldBy === 'strips') === (heldBy === 'strips')) return { heldBy };
  return {
    heldBy,
    width: i.asideWidth,
    depth: i.asideDepth,
    endRoom: i.asideRoom,
    asideWidth: i.width,
    asideDepth: i.depth,
    asideRoom: i.endRoom,
  };
}

export const looseBore = (c: Case, i: Inside): Ask => ({
  as: 'choice',
  title: insideTitle(c, i.id, 'bore'),
  now: i.bore ?? 'template',
  choices: borers,
  save: (by) => editInside(c.id, i.id, { bore: by as Inside['bore'] }),
});

export const templateHoles = (c: Case, i: Inside): Ask => ({
  as: 'count',
  title: insideTitle(c, i.id, 'templateHoles'),
  unit: words.holes,
  now: i.templateHoles,
  save: (templateHoles) => editInside(c.id, i.id, { templateHoles }),
});

/** Pins or clips bought over the four of each shelf. */
export const looseSpares = (c: Case, i: Inside): Ask => ({
  as: 'count',
  title: insideTitle(c, i.id, i.heldBy === 'strips' ? 'spareClips' : 'sparePins'),
  unit: i.heldBy === 'strips' ? words.clips : words.pins,
  now: i.spares ?? 0,
  save: (spares) => editInside(c.id, i.id, { spares }),
});
