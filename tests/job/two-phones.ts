import { doubledIn } from '../../src/job/doubled';
import type { Change } from '../../src/job/entry';
import { fold } from '../../src/job/log';
import { said } from '../../src/job/merge';
import { type Log, tap } from './phones';

export const at = 'boards/side/length';

export const edit = (value: string | null, path = at): Change => ({ kind: 'edit', path, value });

export const op = 'cut/side/r1~1~p1/left';

export const tick = (figure: string): Change => ({ kind: 'tick', op, figure });

export const untick: Change = { kind: 'untick', op };

export const start = tap([], 'anna', [edit('64'), edit('Side', 'boards/side/name')]);

export const readings = (log: Log) => doubledIn(fold(log)).map((d) => [d.place, ...d.readings.map(said)]);

export const value = (log: Log, path = at) => fold(log).values.get(path);
