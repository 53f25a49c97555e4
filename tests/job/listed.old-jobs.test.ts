import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { editBadPlace, editPlace, editReading } from '../../src/job/edits';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { jobOf } from '../../src/job/job';
import { fold, merge } from '../../src/job/log';
import { toStored } from '../../src/length/stored';
import { planOf } from '../../src/plan/plan';
import type { What } from '../../src/trade/setups/operation';
import { l } from '../trade/grooves/sample';
import { type Log, tap } from './phones';

const fixture = (name: string): string =>
  readFileSync(path.join(import.meta.dirname, 'fixtures', `${name}.json`), 'utf8');

function logOf(name: string): Log {
  const read = readJobFile(fixture(`lists-${name}`));
  if (!read.ok) throw new Error(read.error.code);
  return read.value.entries;
}

const [anna, ben] = [logOf('anna'), logOf('ben')];
const job = anna[0]?.job ?? '';
const jobAt = (log: Log) => jobOf(job, fold(log).values);
const places = (all: readonly (Parameters<typeof toStored>[0] | undefined)[]) =>
  all.map((one) => (one ? toStored(one) : null));

/** Steps that no job had then: they wait beside the others, and change nothing of them. */
const cameLater: readonly What[] = [
  ...(['carry-in', 'anchor', 'check-again', 'finish', 'cure', 'load', 'label', 'look-back'] as const),
];

/** What a log comes to, in the words the fixtures say it. */
function said(log: Log) {
  const { ticks, doubled } = fold(log);
  const now = jobAt(log);
  return {
    readings: now.stock.map((s) => [s.id, s.readings.map(toStored)]),
    bad: now.stock.map((s) => [s.id, s.badPlaces.flatMap(({ from, to }) => places([from, to]))]),
    places: now.boards.flatMap((b) => b.runs.map((r) => [`${b.id} ${r.id}`, places(r.at)])),
    bays: now.cases.map((c) => [c.id, places(c.bays)]),
    ticks: [...ticks.keys()].sort(),
    operations: planOf(now, {})
      .operations.filter(({ what }) => !cameLater.includes(what))
      .map(({ id, setup }) => `${id} ${setup.figure ? toStored(setup.figure.value) : ''}`),
    doubled: [...doubled.keys()].sort(),
  };
}

describe('jobs kept when lists were one entry', () => {
  test.each([
    ['anna', anna],
    ['ben', ben],
    ['both', merge(anna, ben)],
  ])('%s comes to what it came to then, to the last operation', (name, log) =>
    expect(said(log)).toEqual(JSON.parse(fixture(`said-${name}`))),
  );

  test('written out and read again they are the same', () => {
    const read = readJobFile(writeJobFile({ job, entries: anna }));
    expect(read.ok && read.value.entries).toEqual(anna);
  });

  test('what is added to one today stands beside the list of the other, and nothing more is asked', () => {
    const more = tap(tap(anna, 'anna', editReading('sheetb', 'x', { size: l('.730') })), 'anna', [
      ...editPlace({ board: 'rack', run: 'pegs' }, 'y', { at: l('20') }),
      ...editBadPlace('maple', 'z', { from: l('50'), to: l('51') }),
    ]);
    const both = merge(more, ben);
    const { stock, boards } = jobAt(both);
    const before = said(merge(anna, ben));
    const readings = stock.find(({ id }) => id === 'sheetb')?.readings.map(toStored);
    expect(readings).toEqual([...(before.readings.find(([id]) => id === 'sheetb')?.[1] ?? []), '73/100']);
    expect(stock.find(({ id }) => id === 'maple')?.badPlaces).toHaveLength(3);
    expect(places(boards.find(({ id }) => id === 'rack')?.runs[0]?.at ?? [])).toEqual([
      '4',
      '8',
      '12',
      '16',
      '20',
    ]);
    expect([...fold(both).doubled.keys()]).toEqual(before.doubled);
    expect(fold(both).ticks.has('cut/rack/pegs~2')).toBe(true);
  });
});
