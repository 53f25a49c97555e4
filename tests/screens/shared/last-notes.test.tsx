import { expect, test } from 'vitest';
import { editJob, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { LastNotes } from '../../../src/screens/shared/last-notes';
import { withNote } from '../../../src/screens/shared/last-notes-words';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';
import { all, hostTree, texts } from '../host-tree';

const before = { id: 'old', name: 'Herbarium', place: '', last: '', next: ['Back first', 'One sheet more'] };

function drawn(lines: readonly object[], ...changes: readonly Change[]) {
  const { job, folded } = worked([...editJob({ name: 'Cabinet' }), ...changes]);
  const acts: (readonly Change[])[] = [];
  const bench = {
    shelf: { jobs: { value: lines } },
    folded: { value: folded },
    act: (_: string, made: readonly Change[]) => acts.push(made),
  } as never;
  const tree = hostTree(<LastNotes bench={bench} job={job} />);
  return { says: texts(tree), chips: all(tree, 'chip'), acts };
}

function tap(chip: ReturnType<typeof all>[number] | undefined): void {
  if (!chip) throw new Error('there is nothing to tap');
  (chip.props.onClick as () => void)();
}

test('notes of the job before stand here, each taken over by its tap into what failed last time', () => {
  const { says, chips, acts } = drawn([before]);
  expect(says).toContain('Noted for next time, Herbarium');
  expect(chips).toHaveLength(2);
  tap(chips[1]);
  expect(acts).toEqual([editJob({ failed: 'One sheet more' })]);
});

test('one taken over stands there no longer, and the next is put behind what was said', () => {
  const said = editJob({ failed: 'Trays jammed; One sheet more' });
  const { chips, acts } = drawn([before], ...said);
  expect(chips).toHaveLength(1);
  tap(chips[0]);
  expect(acts).toEqual([editJob({ failed: 'Trays jammed; One sheet more; Back first' })]);
  expect(withNote('', 'Back first')).toBe('Back first');
});

test('nothing of a job deleted, of this one itself, or once something is cut', () => {
  expect(drawn([{ ...before, deleted: 'x' }]).says).toEqual([]);
  expect(drawn([{ ...before, id: 'j' }]).says).toEqual([]);
  expect(drawn([before], ...tickOf('cut/c1~left/rip/1', l('3'))).says).toEqual([]);
});
