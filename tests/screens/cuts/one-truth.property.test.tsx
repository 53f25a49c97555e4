import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Checklist } from '../../../src/plan/checklist';
import { BySetup } from '../../../src/screens/cuts/by-setup';
import { plainCuts } from '../../../src/screens/cuts/plain';
import { SettingInHand } from '../../../src/screens/machine/setting';
import type { Card } from '../../../src/trade/setups/checklist';
import { isStep } from '../../../src/trade/setups/operation';
import { anyCase } from '../../plan/any-case';
import { runs } from '../../runs';
import { benchOf } from '../bench-of';
import { all, hostTree, text, texts } from '../host-tree';

// Read off what stands on the screens and in the text, as a person would: nothing here asks the plan what is right.

/** What folds stands unfolded in the list; nothing moves. */
const unfolded = vi.hoisted(() => ({ all: false }));
vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [
    typeof first === 'function' ? first() : first === false ? unfolded.all : first,
    () => undefined,
  ],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });

/** A figure with its remainder, however written: `29 1/16 (scant 0.009)`, `29 and 1/16 inches, scant by 0.009`. */
function figureIn(written: string): { readonly size: number; readonly rest: string } {
  const words = written.replace(/ and | by /g, ' ').replace(/ inches|[(),]/g, '');
  const found = /^(-?\d+\/\d+|-?[\d.]+(?: \d+\/\d+)?)( mm)?(.*)$/.exec(words.trim());
  if (!found) throw new Error(`no figure: ${written}`);
  const size = (found[1] ?? '').split(' ').reduce((sum, part) => {
    const [n = '0', d = '1'] = part.split('/');
    return sum + Number(n) / Number(d);
  }, 0);
  return { size, rest: (found[3] ?? '').trim() };
}

/** The card as it stands in plain text, which is what is printed too. */
function plainOf(blocks: readonly string[], k: number) {
  const [head = '', build = '', ...lines] = (blocks[k + 1] ?? '').split('\n');
  const pieces = lines.filter(isPiece).map((line) => {
    const [, ticked, what = '', lies = '', waits] =
      /^ {3}\[(.)\] (.*?)(?:; (.*?))?(?: \(blocked: (.*)\))?$/.exec(line) ?? [];
    return { name: what.split(':')[0] ?? '', lies, ticked: ticked === 'x', blocked: waits !== undefined };
  });
  const worth = lines.filter((line) => !isPiece(line)).map((line) => line.trim());
  return { head, build, pieces, worth };
}

const isPiece = (line: string): boolean => line.startsWith('   [');

/** The same card as its row in the list: stack over height, how its pieces lie, its figure. */
function rowOf(row: Parameters<typeof text>[0]) {
  const [stack = '', high = ''] = all(row?.inside ?? [], 'on-arbor').flatMap((on) =>
    on.inside.map((cell) => (typeof cell === 'string' ? cell : text(cell))),
  );
  const says = text(all(row?.inside ?? [], 'muted')[0]);
  const figure = all(row?.inside ?? [], 'set-to')[0];
  return {
    whole: row ? texts(row.inside).join('') : '',
    stack: stack.trim(),
    high: high.replace(/[↑↓]/, '').trim(),
    lies: says.replace(/ · blocked$/, ''),
    blocked: says.endsWith(' · blocked'),
    figure: figure && text(all(figure.inside, 'sr')[0]),
  };
}

/** The same card at the machine: strip, figure, and a box for every piece that may be cut. */
function machineOf(bench: never, list: Checklist, card: Card) {
  const tree = hostTree(<SettingInHand bench={bench} list={list} card={card} />);
  const strip = new Map(
    all(tree, 'mstrip')
      .flatMap((one) =>
        one.inside.flatMap((cell) => (typeof cell === 'string' ? [] : [[...texts(cell.inside)] as string[]])),
      )
      .map(([label = '', ...cells]) => [label, cells]),
  );
  const figure = all(tree, 'giant')[0];
  const boxes = all(tree, 'mpiece').map((box) => ({
    lies: all(box.inside, 'lies').flatMap(({ inside }) =>
      inside.flatMap((line) => (typeof line === 'string' ? [] : [text(line)])),
    ),
    offered: box.props.role === 'checkbox',
    many: box.cls.includes('many'),
    letters: all(box.inside, 'copies').flatMap(({ inside }) => inside),
    waits: all(box.inside, 'mblocked').length > 0,
  }));
  return { whole: texts(tree).join(''), strip, figure: figure && text(all(figure.inside, 'sr')[0]), boxes };
}

const lower = (line: string): string => line.charAt(0).toLowerCase() + line.slice(1);
const same = (a: readonly string[], b: readonly string[]) =>
  expect([...new Set(a)].sort()).toEqual([...new Set(b)].sort());

/** All that was to be cut before a card is cut, its test too: its pieces are free. */
function cutBefore(list: Checklist, k: number): Checklist {
  const done = new Set(list.cards.slice(0, k).flatMap((card) => card.operations.map((op) => op.id)));
  const isDone = (id: string) => done.has(id) || id.startsWith('cut/test/');
  return { ...list, doing: { ...list.doing, done: isDone, measured: () => true } };
}

/** The row of a card in the list, found by where a tap on it leads. */
function rowIn(list: Checklist, card: Card) {
  unfolded.all = true;
  let id: string | undefined;
  const go = (to: { readonly id?: string }) => {
    id = to.id;
  };
  const tree = hostTree(<BySetup list={list} stand={undefined} go={go as never} />);
  unfolded.all = false;
  return all(tree, 'cutrow').find((row) => {
    (row.props.onClick as () => void)();
    return id === card.id;
  });
}

type Lying = { readonly name: string; readonly lies: string };

const part = (of: RegExp, { lies }: Lying): string | undefined => of.exec(lies)?.[1];
const face = /(?:^|, )([^,]* (?:down|up|toward you|away from you))(?:,|$)/;
const edge =
  /((?:true|front|back|left|right|bottom|top|ripped|squared) (?:edge|end)) (?:on fence|toward you)/;
const leads = /(\w+ (?:edge|end)) leads/;
const stop = /(\w+ end) (?:to stop|on your)/;
const letter = ({ name }: Lying): string =>
  /\bleft\b/i.test(name) ? 'L' : /\bright\b/i.test(name) ? 'R' : (name.split(',')[0] ?? '');

/** The row says the face and the end of every piece, and tells by edge or by what leads those apart that differ. */
function shortTells(short: string, piece: Lying, beside: readonly Lying[]): void {
  const lies = part(face, piece)?.replace(' face ', ' ');
  if (lies) expect(short).toContain(lies);
  const end = part(stop, piece);
  if (end) expect(short).toContain(end);
  const own = part(edge, piece);
  const differ = (of: RegExp) => new Set(beside.map((other) => part(of, other))).size > 1;
  const first = part(leads, piece);
  if (differ(edge)) expect(short).toContain(`${letter(piece)} ${own?.split(' ')[0]}`);
  else if (own) expect(short).toContain(own);
  if (!differ(edge) && differ(leads))
    expect(short).toContain(`${letter(piece)} ${first?.split(' ')[0]} leads`);
}

test('list, plain text, print and machine give one figure, remainder, stack, height and lie of every piece', () => {
  let thinner = 0;
  fc.assert(
    fc.property(anyCase, fc.nat(), (changes, pick) => {
      const { list: fresh, bench } = benchOf(changes);
      const k = pick % fresh.cards.length;
      const list = cutBefore(fresh, k);
      const card = list.cards[k];
      if (!card?.operations[0] || isStep(card.operations[0])) return;
      const plain = plainOf(plainCuts(list).split('\n\n'), k);
      const row = rowOf(rowIn(list, card));
      const machine = machineOf(bench, list, card);

      const written = /^\d+\. \D+? (-?\d.*)$/.exec(plain.head)?.[1];
      const { figure: listed } = row;
      const { figure: set } = machine;
      if (written === undefined || listed === undefined || set === undefined)
        return expect([written, listed, set]).toEqual([undefined, undefined, undefined]);
      expect(listed).toBe(set);
      expect(figureIn(written).size).toBeCloseTo(figureIn(set).size, 3);
      expect(figureIn(written).rest).toBe(figureIn(set).rest);

      // what stands on less than the thickest reading says so, everywhere or nowhere
      for (const says of plain.worth) {
        thinner += 1;
        expect([row.whole, machine.whole]).toEqual([
          expect.stringContaining(says),
          expect.stringContaining(says),
        ]);
      }
      const less = /Its thickest reading is/;
      expect([less.test(row.whole), less.test(machine.whole)]).toEqual(Array(2).fill(plain.worth.length > 0));

      const high = machine.strip.get('High')?.join('') ?? '';
      expect(row.high).toBe(high);
      if (high) expect(plain.build).toContain(`, ${high} high`);
      const [near = '', , exact = ''] = machine.strip.get('Stack') ?? [];
      if (near) expect([row.stack, plain.build]).toEqual([near, expect.stringContaining(`stack ${exact}`)]);

      const free = plain.pieces.filter((piece) => !piece.ticked);
      expect(free.filter((piece) => piece.blocked)).toEqual([]);
      const lies = machine.boxes.map((box) => [...box.lies].map(lower).join(', '));
      same(
        free.map((piece) => piece.lies),
        lies.filter(Boolean),
      );
      for (const piece of free) shortTells(row.lies, piece, free);
    }),
    { numRuns: runs(40) },
  );
  expect(thinner).toBeGreaterThan(0);
});

test('what is blocked is blocked everywhere: in the list, in plain text and print, at the machine', () => {
  fc.assert(
    fc.property(anyCase, fc.nat(), fc.array(fc.nat(), { maxLength: 40 }), (changes, pick, cut) => {
      const { list: fresh, bench } = benchOf(changes);
      const ops = fresh.plan.operations;
      const done = new Set(cut.map((n) => ops[n % ops.length]?.id));
      const list = { ...fresh, doing: { ...fresh.doing, done: (id: string) => done.has(id) } };
      const k = pick % list.cards.length;
      const card = list.cards[k];
      if (!card) return;
      const { pieces } = plainOf(plainCuts(list).split('\n\n'), k);
      const blocked = pieces.filter((piece) => piece.blocked).length;
      expect(rowOf(rowIn(list, card)).blocked).toBe(blocked > 0);
      const { boxes } = machineOf(bench, list, card);
      const single = boxes.filter((box) => !box.many);
      if (single.length === boxes.length) {
        expect(boxes.filter((box) => box.waits)).toHaveLength(blocked);
        expect(boxes.filter((box) => box.offered)).toHaveLength(boxes.length - blocked);
      } else expect(boxes.some((box) => box.waits)).toBe(blocked > 0);
    }),
    { numRuns: runs(40) },
  );
});
