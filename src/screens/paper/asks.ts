import type { Job } from '../../job/job';
import { editPrint, onAll } from '../../job/prints';
import { isPositive, type Length } from '../../length/length';
import { printCheck, printKey } from '../../plan/print-check';
import { longOf, type PaperAt } from '../../plan/stick-print';
import type { Stick } from '../../plan/sticks-of';
import { readBar } from '../../trade/paper/bar';
import type { Ask } from '../shared/ask';
import { lengthRefused } from '../shared/refused-words';
import * as words from './stick-page-words';

/** What a job is printed on. */
export const paperAsks = ({ on, wide, margin, overlap }: PaperAt) =>
  ({
    on: {
      as: 'choice',
      title: words.paper,
      now: on,
      choices: words.papers,
      save: (value) => editPrint(onAll, { paper: value as PaperAt['on'] }),
    },
    wide: {
      as: 'length',
      title: words.rollWide,
      now: wide,
      refuse: lengthRefused,
      save: (value) => editPrint(onAll, { wide: value }),
    },
    margin: {
      as: 'length',
      title: words.margin,
      now: margin,
      save: (value) => editPrint(onAll, { margin: value }),
    },
    overlap: {
      as: 'length',
      title: words.overlap,
      now: overlap,
      save: (value) => editPrint(onAll, { overlap: value }),
    },
  }) satisfies Readonly<Record<string, Ask>>;

/** What a print measured. */
export function barAsks(job: Job, stick: Stick) {
  const key = printKey(stick);
  const { read: said, drawn } = printCheck(job, stick);
  const refuse = (read: Length): string | undefined => {
    if (!isPositive(read)) return lengthRefused(read);
    const found = readBar({ drawn, read, stick: longOf(stick) });
    return found.ok ? undefined : words.wrongBar(drawn, read);
  };
  return {
    bar: {
      as: 'length',
      title: words.barAlong,
      now: said.bar,
      refuse,
      save: (value) => editPrint(key, { bar: value }),
    },
    across: {
      as: 'length',
      title: words.barAcross,
      now: said.across,
      refuse,
      save: (value) => editPrint(key, { across: value }),
    },
    whole: {
      as: 'length',
      title: words.wholeStick,
      now: said.whole,
      refuse: lengthRefused,
      save: (value) => editPrint(key, { whole: value }),
    },
  } satisfies Readonly<Record<string, Ask>>;
}
