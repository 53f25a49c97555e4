import type { Entry } from '../../../src/job/entry';
import type { Row } from '../../../src/store/journal/row';

export const entry = (count: number, job = 'j1', label = 'Cut: Left “3 ⅜”'): Entry => ({
  job,
  device: 'phone',
  count,
  at: '2026-11-25T10:00:00.000Z',
  act: `phone.${count}`,
  label,
  kind: 'tick',
  op: 'cut/b1/s1/1',
  figure: '3/4',
});

export const logged = (count: number, job = 'j1'): Row => ['log', entry(count, job)];
