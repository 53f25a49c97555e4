import type { Stand } from '../../job/room';
import { editStand } from '../../job/room-edits';
import { feetAcross } from '../../plan/feet-places';
import type { Ask } from '../shared/ask';
import { countRefused, lengthRefused } from '../shared/refused-words';
import * as words from './words';

type StandLength = keyof typeof words.footTitles;

/** The blanks of how a case stands. */
export function standAsks(id: string, stand: Stand) {
  const length = (field: StandLength): Ask => ({
    as: 'length',
    title: words.footTitles[field],
    kind: 'place',
    now: stand[field],
    ...(field === 'wedgeThin' || field === 'footShort' ? {} : { refuse: lengthRefused }),
    save: (value) => editStand(id, { [field]: value }),
  });
  const across: Ask = {
    as: 'count',
    title: words.acrossTitle,
    now: feetAcross(stand),
    refuse: countRefused(9, words.inRow),
    save: (value) => editStand(id, { across: value }),
  };
  const middle: Ask = {
    as: 'choice',
    title: words.middleTitle,
    now: stand.middleRow ? 'yes' : 'no',
    choices: (['no', 'yes'] as const).map((value) => ({ value, label: words.yesNo[value] })),
    save: (to) => editStand(id, { middleRow: to === 'yes' }),
  };
  const how: Ask = {
    as: 'choice',
    title: words.howTitle,
    now: stand.footHow ?? 'shims',
    choices: (['shims', 'screw'] as const).map((value) => ({ value, label: words.hows[value] })),
    save: (to) => editStand(id, { footHow: to === 'screw' ? 'screw' : 'shims' }),
  };
  return {
    across,
    middle,
    how,
    footShort: length('footShort'),
    footLong: length('footLong'),
    footHigh: length('footHigh'),
    wedgeThin: length('wedgeThin'),
    wedgeThick: length('wedgeThick'),
    wedgeLong: length('wedgeLong'),
  };
}
