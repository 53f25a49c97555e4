import type { Job } from '../../job/job';
import { type Span, spansOf } from '../../plan/shelf-loads';
import type { Worked } from '../../trade/carcass/parts';
import { inSentence } from '../../ui/pad-words';
import * as lot from '../shared/lot-words';
import * as says from '../shared/sag-words';
import { nameOf } from './asks';
import * as words from './words';

/** All that is wrong on the shelves of a case: what does not go on, and what sags too far, by how much. */
export const wrongsOf = (job: Job, worked: Worked): readonly string[] =>
  spansOf(job, worked).flatMap(spanWrong);

const spanWrong = (span: Span): readonly string[] =>
  span.loaded.flatMap(({ piece, sag, unfit, things, load, heavy }) => {
    const named = span.part.copies > 1 ? words.numbered(nameOf(span), piece) : nameOf(span);
    return [
      ...unfit.map((x) =>
        words.unfit(lot.nameOf(things.find(({ id }) => id === x.thing) ?? { name: '' }), x),
      ),
      ...(sag.ok && sag.value.over ? [`${named}: ${inSentence(says.sags(sag.value))}`] : []),
      ...(heavy ? [`${named}: ${says.tooHeavy(load, heavy)}`] : []),
      ...(sag.ok ? [] : [`${named}: ${inSentence(says.shelfErrorText(sag.error))}`]),
    ];
  });
