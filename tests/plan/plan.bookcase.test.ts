import { describe, expect, test } from 'vitest';
import { checklistOf } from '../../src/plan/checklist';
import type { Side } from '../../src/trade/setups/on';
import { isStep, type Operation } from '../../src/trade/setups/operation';
import { placingOf } from '../../src/trade/setups/placing';
import { w } from '../length/write-figures';
import { bookcase } from './bookcase';
import { type CutRow, cutList } from './bookcase-cut-list';
import { worked } from './job-of';

const { plan, folded } = worked(bookcase);
const { cards } = checklistOf(plan, folded);

/** What is cut of a part: a rabbet by what lies in it, a dado by what stands in it. */
const cutOf = (op: Operation): string =>
  op.what === 'rabbet'
    ? (op.id.split('/')[2] ?? '').replace('~', ' ')
    : (op.groove?.setting.split('~')[0] ?? op.what);

/** An operation as a row of a cut list. */
const rowOf = (op: Operation): Omit<CutRow, 'pieces'> => ({
  part: op.part.replace('case~', ''),
  cut: cutOf(op),
  at: w(op.setup.figure?.value ?? op.figure),
  rest: w(op.setup.figure?.rest ?? op.figure),
  ...(op.setup.cutter ? { stack: w(op.setup.cutter) } : {}),
  ...(op.setup.height ? { high: w(op.setup.height) } : {}),
  lies: liesOf(op),
});

function liesOf(op: Operation): string {
  const { face, onFence, leads, toStop } = placingOf(op);
  const side = (of: Side | undefined, does: string) => (of ? [`${of.named} ${of.at} ${does}`] : []);
  return [
    ...(face ? [`${face.named} ${face.lies}`] : []),
    ...side(onFence, 'on fence'),
    ...side(leads, 'leads'),
    ...side(toStop, 'to stop'),
  ].join(', ');
}

const made = plan.operations.filter((op) => op.part !== 'test' && !isStep(op)).map(rowOf);

describe('the bookcase, cut by cut', () => {
  test.each(cutList.map((row) => [`${row.part}, ${row.cut}`, row] as const))('%s', (_, row) => {
    const { pieces, ...wanted } = row;
    const own = made.filter((x) => x.part === row.part && x.cut === row.cut);
    expect(own).toEqual(Array.from({ length: pieces }, () => wanted));
  });

  test('nothing else is cut', () => {
    const asked = cutList.flatMap((row) =>
      Array.from({ length: row.pieces }, () => `${row.part}, ${row.cut}`),
    );
    expect(made.map((row) => `${row.part}, ${row.cut}`).sort()).toEqual(asked.sort());
  });
});

describe('the order of the bookcase', () => {
  const dryFit = cards.findIndex((card) => card.operations.some((op) => op.what === 'dry-fit'));
  const partsFrom = (from: number, to?: number) =>
    new Set(
      cards.slice(from, to).flatMap((card) => card.operations.map((op) => op.part.replace('case~', ''))),
    );

  test('no figure is set a second time', () => {
    expect(cards.filter((card) => card.id.includes('~~'))).toEqual([]);
  });

  test('the bottom and both shelves in dadoes are one card, cut for the dry-fit', () => {
    const lengths = cards.find((card) =>
      card.operations.some((op) => op.part === 'case~bottom' && op.what === 'length'),
    );
    expect(lengths?.operations.map((op) => op.part)).toEqual(['case~bottom', 'case~low', 'case~high']);
    expect(lengths && cards.indexOf(lengths)).toBeLessThan(dryFit);
  });

  test('after it comes only what is fitted to the case as it stands', () => {
    const late = partsFrom(dryFit + 1);
    // the last is the bench of the whole job, where it is looked back at
    const fitted = ['back', 'bench', 'pins', 'railbottom', 'railtop', 'stile', '~bench'];
    expect([...late].sort()).toEqual(fitted);
  });

  test('left and right stand on one card wherever both are cut', () => {
    const ofSides = cards
      .map((card) => card.operations.filter((op) => ['case~left', 'case~right'].includes(op.part)))
      .filter((ops) => ops.length > 0);
    expect(ofSides.map((ops) => ops.map((op) => op.part))).toEqual(
      ofSides.map(() => ['case~left', 'case~right']),
    );
    expect(ofSides).toHaveLength(7); // rip, length, three dadoes, two rabbets
  });
});
