import { expect, test } from 'vitest';
import { editBoxJoint, isOfJoint, withBoxJoint } from '../../src/job/box-joint';
import { editBank } from '../../src/job/edits';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import type { Corner } from '../../src/trade/fronts/corner';
import { logOf } from '../plan/job-of';
import { l } from '../trade/grooves/sample';

const whole: Required<Corner> = {
  boxJoint: 'box-joint',
  frontRabbet: l('3/8'),
  fingers: 'equal',
  finger: l('.502'),
  fingerStep: l('1.007'),
  fingerPlay: l('.003'),
  frontAt: 'between',
  frontIs: 'box',
  dowel: l('1/4'),
  dowelLong: l('1 1/2'),
};

function read(...said: readonly ReturnType<typeof editBoxJoint>[]) {
  const job = jobOf('j', fold(logOf([...editBank('b', { name: 'Trays' }), ...said.flat()])).values);
  const [bank] = job.banks;
  if (!bank) throw new Error('no bank');
  return { job, bank, joined: withBoxJoint(job, bank) };
}

test('all that is said of a joint is kept and read back', () => {
  const { job, joined } = read(editBoxJoint('b', whole));
  expect(job.unread).toEqual([]);
  expect(joined).toMatchObject(whole);
});

test('each thing said is a path of its own, and can be taken away alone', () => {
  const { joined } = read(
    editBoxJoint('b', whole),
    editBoxJoint('b', { finger: undefined, fingers: undefined }),
  );
  expect(joined).toMatchObject({ ...whole, finger: undefined, fingers: undefined });
});

test('a bank of which nothing is said is the same bank: half-blind, as it always was', () => {
  const { bank, joined } = read();
  expect(joined).toBe(bank);
});

// stands in logs that phones keep
test('is spelled so, for ever', () => {
  expect(editBoxJoint('b', whole).map((change) => ('path' in change ? change.path : ''))).toEqual([
    'banks/b/corner/joint/how',
    'banks/b/corner/rabbet/size',
    'banks/b/corner/ends/how',
    'banks/b/corner/finger/size',
    'banks/b/corner/step/size',
    'banks/b/corner/play/size',
    'banks/b/corner/front/how',
    'banks/b/corner/is/how',
    'banks/b/corner/dowel/size',
    'banks/b/corner/dowellong/size',
  ]);
  expect([isOfJoint('finger'), isOfJoint('lap')]).toEqual([true, false]);
});

test('a joint that a later version knows is kept, and stands for nothing here', () => {
  const change = { kind: 'edit', path: 'banks/b/corner/joint/how', value: 'hinged' } as const;
  const { job, joined } = read([change]);
  expect([job.unread, joined.boxJoint]).toEqual([[], undefined]);
});
