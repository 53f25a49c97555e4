import { editCase } from '../../job/edits';
import type { Case } from '../../trade/carcass/case';
import { endAt, type Flat, jointAt, rightJointsAt } from '../../trade/carcass/meetings';
import { hugsAt } from '../../trade/carcass/tongues';
import type { Ask } from '../shared/ask';
import { hugsTitles, hugsWords, joins, joinTitles, rightTitles, rightWords } from './join-words';

/** By which joint parts of the case meet. */
export const caseJoint = (c: Case, meeting: keyof typeof joinTitles): Ask => ({
  as: 'choice',
  title: joinTitles[meeting],
  now: jointAt(c, meeting),
  choices: Object.entries(joins[meeting]).map(([value, said]) => ({ value, ...said })),
  save: (how) => editCase(c.id, { [`${meeting}Joint`]: how }),
});

/** By which joint the right end of a bottom or top meets its side, where that is not as at the left. */
export function caseRight(c: Case, flat: Flat): Ask | undefined {
  const left = jointAt(c, flat);
  const others = rightJointsAt(c, flat).filter((joint) => joint !== left);
  const own = jointAt(c, endAt(flat, 'right'));
  if (others.length === 0) return undefined;
  return {
    as: 'choice',
    title: rightTitles[flat],
    now: own === left ? 'as' : own,
    choices: (['as', ...others] as (keyof typeof rightWords)[]).map((value) => ({
      value,
      ...rightWords[value],
    })),
    save: (how) => editCase(c.id, { [`${endAt(flat, 'right')}Joint`]: how === 'as' ? undefined : how }),
  };
}

/** At which face of a part its tongues lie. */
export const caseHugs = (c: Case, meeting: keyof typeof hugsTitles): Ask => ({
  as: 'choice',
  title: hugsTitles[meeting],
  now: hugsAt(c, meeting),
  choices: Object.entries(hugsWords[meeting]).map(([value, said]) => ({ value, ...said })),
  save: (face) => editCase(c.id, { [`${meeting}Hugs`]: face }),
});
