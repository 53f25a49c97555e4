import { editWork } from '../../job/edits';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import { handMachineIds } from '../../trade/machines/stored-ids';
import type { HandWork as Work } from '../../trade/setups/operations';
import type { Ask } from '../shared/ask';
import { machineWords } from '../shared/machines/machine-words';
import { partWord } from '../shared/part-words';
import * as words from './words';

const machines = Object.entries(machineWords).flatMap(([value, { forHandWork: label }]) =>
  label ? [{ value, label }] : [],
);

const machineOf = (word: string) => handMachineIds.find((id) => id === word) ?? 'hand';

/** What is asked of an operation by hand, by the name of its blank. */
export const handAsks = (work: Work, part: Part, plan: Plan): Readonly<Record<string, Ask>> => ({
  name: {
    as: 'text',
    title: words.nameTitle(partWord(part.name)),
    now: work.name,
    save: (name) => editWork(work.id, { name }),
  },
  machine: {
    as: 'choice',
    title: words.machineTitle(work.name),
    now: work.machine,
    choices: machines,
    save: (machine) => editWork(work.id, { machine: machineOf(machine) }),
  },
  figure: {
    as: 'length',
    title: words.figureTitle(work.name),
    kind: 'place',
    now: work.figure,
    save: (figure) => editWork(work.id, { figure }),
  },
  after: {
    as: 'choice',
    title: words.afterTitle(work.name),
    now: work.after ?? '',
    choices: [
      { value: '', label: words.itsLength },
      { value: 'rip', label: words.itsRip },
      ...others(work, plan),
    ],
    save: (value) => editWork(work.id, { after: value === '' ? undefined : value }),
  },
});

/** The other operations by hand of the job, each with the part it is done to. */
const others = ({ id }: Work, { job, parts }: Plan) =>
  job.work
    .filter((other) => other.id !== id)
    .map((other) => {
      const part = parts.find((p) => p.id === other.part);
      return {
        value: other.id,
        label: words.otherByHand(other.name),
        hint: part ? partWord(part.name) : words.somePart,
      };
    });
