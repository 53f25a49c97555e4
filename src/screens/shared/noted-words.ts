import type { NotedPlace } from '../../job/place-code';
import { writeLength } from '../../length/write';
import type { Plan } from '../../plan/plan';
import { counted } from './counted';
import { partWord } from './part-words';
import { setupTitle } from './setup-title';

export const note = 'Note';
export const pictures = 'Pictures';
export const noNote = 'none';
export const noted = ({ of }: NotedPlace): string => `Note: ${placeNouns[of]}`;
export const noteTitle = (name: string): string => `Note: ${name}`.slice(0, 80);
export const picturesSaid = (count: number): string =>
  count === 0 ? pictures : counted(count, 'picture', 'pictures');

const placeNouns: Readonly<Record<NotedPlace['of'], string>> = {
  job: 'the job',
  room: 'the room',
  part: 'a part',
  setup: 'a setting',
  drawer: 'a drawer',
};

/** What a place is called; of what is no longer in the job, what kind of thing it was. */
export function placeWord(place: NotedPlace, plan: Plan | undefined): string {
  switch (place.of) {
    case 'job':
      return 'The job';
    case 'room':
      return 'The room';
    case 'part': {
      const part = plan?.parts.find(({ id }) => id === place.id);
      return part ? partWord(part.name) : 'A part no longer in the job';
    }
    case 'setup':
      return setupWord(place.id, plan);
    case 'drawer': {
      const [, column = '1', no = '1'] = /~c(\d+)d(\d+)$/.exec(place.id) ?? [];
      const [bank] = place.id.split('~');
      const across = plan?.job.banks.find(({ id }) => id === bank)?.across ?? 1;
      return partWord({ role: 'drawer', no: Number(no), ...(across > 1 ? { column: Number(column) } : {}) });
    }
  }
}

function setupWord(key: string, plan: Plan | undefined): string {
  const op = plan?.operations.find(({ setup }) => setup.key === key);
  if (!op || !plan) return 'A setting no longer in use';
  const { figure } = op.setup;
  return [setupTitle(op), figure ? writeLength(figure.value, plan.job.tape) : ''].filter(Boolean).join(' ');
}

/** One line at the saw. @example atTheSaw('Left side', 'knot at the front') // 'Left side: knot at the front' */
export const atTheSaw = (name: string, said: string): string => `${name}: ${said}`;
