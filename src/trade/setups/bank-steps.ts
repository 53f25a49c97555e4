import type { Length } from '../../length/length';
import { zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { type Operation, opId, type What } from './operation';
import { setupOf } from './setup';

/** A drawer as its steps at the bench know it. */
export type DrawerWork = {
  readonly no: number;
  readonly column: number;
  /** `Drawer 3`, or `Drawer 3, column 2`; and its front: `Front 3`. */
  readonly name: string;
  readonly frontName: string;
  /** Parts of its box; the part that is its front. */
  readonly box: readonly string[];
  readonly front: string;
};

/** What the steps of a bank of drawers are made of. Inches. */
export type BankWork = {
  readonly id: string;
  readonly name: string;
  /** The case it stands in, and whether that has a face frame. */
  readonly of?: string | undefined;
  readonly framed: boolean;
  /** Edges on the story stick: id, words with the figure, and the figure. */
  readonly marks: readonly {
    readonly id: string;
    readonly name: string;
    readonly words: string;
    readonly at: Length;
  }[];
  readonly drawers: readonly DrawerWork[];
  /** By drawer, longest first. */
  readonly sticks: readonly { readonly drawer: number; readonly length: Rounded }[];
  /** Numbers of the fronts in the order they are fitted. */
  readonly fitOrder: readonly number[];
  /** By column: first hole from the end stop of the jig, and what is said beside it. */
  readonly pulls: readonly { readonly column: number; readonly x: Rounded; readonly words: string }[];
};

/** What must be done to the case before its openings can be measured for a bank. */
export const readyFor = (of: string | undefined, framed: boolean): readonly string[] =>
  of === undefined ? [] : [opId(`${of}~bench`, framed ? 'frameon' : 'dryfit', '1')];

const copyOf = ({ column, no }: DrawerWork): string => `c${column}d${no}`;

type Step = {
  readonly bank: BankWork;
  readonly cut: string;
  readonly copy: string;
  readonly name: string;
  readonly what: What;
  readonly which: string;
  readonly after: readonly string[];
};

const step = ({ bank, cut, copy, ...rest }: Step): Operation => ({
  id: opId(`${bank.id}~bench`, cut, copy),
  part: `${bank.id}~bench`,
  copy,
  setup: setupOf({ machine: 'bench', on: { at: 'own', id: `${bank.id} ${rest.what}` } }),
  figure: zero,
  ...rest,
});

/**
 * What is done to banks of drawers beside their cuts: story stick, boxes glued, slides on sticks longest first, boxes
 * hung, the case levelled and anchored, fronts fitted one after another, pulls drilled.
 *
 * @param all operations on the parts, by which each step knows what comes first
 */
export function bankSteps(banks: readonly BankWork[], all: readonly Operation[]): readonly Operation[] {
  const cuts = new Map<string, string[]>();
  for (const op of all) cuts.set(op.part, [...(cuts.get(op.part) ?? []), op.id]);
  const hung = banks.map((bank) => ({ bank, steps: untilHung(bank, cuts) }));
  const levels = levelled(hung);
  return [...hung.flatMap(({ steps }) => steps), ...levels, ...banks.flatMap((bank) => fronts(bank, cuts))];
}

function untilHung(bank: BankWork, cuts: ReadonlyMap<string, readonly string[]>): readonly Operation[] {
  const boxes = bank.drawers.map((drawer) =>
    step({
      bank,
      cut: 'boxup',
      copy: copyOf(drawer),
      name: drawer.name,
      what: 'box-up',
      which: 'dry, then glue; diagonals before it grips',
      after: drawer.box.flatMap((part) => cuts.get(part) ?? []),
    }),
  );
  const slides = slidesOf(bank);
  const hang = bank.drawers.map((drawer) =>
    step({
      bank,
      cut: 'hang',
      copy: copyOf(drawer),
      name: drawer.name,
      what: 'hang',
      which: 'runs free, full out and home',
      after: [
        opId(`${bank.id}~bench`, 'boxup', copyOf(drawer)),
        ...slides.filter((s) => s.copy.startsWith(`${copyOf(drawer)}h`)).map((s) => s.id),
      ],
    }),
  );
  return [...marksOf(bank), ...boxes, ...slides, ...hang];
}

function marksOf(bank: BankWork): readonly Operation[] {
  return bank.marks.map((mark) => ({
    ...step({
      bank,
      cut: `mark~${mark.id}`,
      copy: '1',
      name: mark.name,
      what: 'marks',
      which: mark.words,
      after: readyFor(bank.of, bank.framed),
    }),
    setup: setupOf({ machine: 'stick', on: { at: 'own', id: `${bank.id} story stick` } }),
    figure: mark.at,
    opening: bank.id,
  }));
}

/** One stick, longest first: a length is finished when every column has both its slides on. */
function slidesOf(bank: BankWork): readonly Operation[] {
  const ready =
    bank.of === undefined ? [] : [opId(`${bank.of}~bench`, bank.framed ? 'frameon' : 'glueup', '1')];
  let before: readonly string[] = ready;
  return bank.sticks.flatMap(({ drawer, length }) => {
    const after = before;
    const setup = setupOf({
      machine: 'stick',
      sets: 'stick-length',
      figure: length,
      on: { at: 'own', id: bank.id },
    });
    const own = bank.drawers
      .filter((d) => d.no === drawer)
      .flatMap((d) =>
        (['left', 'right'] as const).map(
          (hand): Operation => ({
            ...step({
              bank,
              cut: 'slide',
              copy: `${copyOf(d)}h${hand}`,
              name: `${d.name}, ${hand} slide`,
              what: 'slide',
              which: 'rests on the stick',
              after,
            }),
            setup,
            figure: length.value,
            opening: bank.id,
          }),
        ),
      );
    before = own.map((op) => op.id);
    return own;
  });
}

type Hung = { readonly bank: BankWork; readonly steps: readonly Operation[] };

const levelId = (bank: BankWork): string => opId(`${bank.of ?? bank.id}~bench`, 'level', '1');

/** A twisted case changes every reveal: level and anchored once, before any front of any bank in it. */
function levelled(hung: readonly Hung[]): readonly Operation[] {
  const byCase = new Map<string, Hung[]>();
  for (const one of hung) byCase.set(levelId(one.bank), [...(byCase.get(levelId(one.bank)) ?? []), one]);
  return [...byCase].flatMap(([id, [first, ...rest]]) =>
    first
      ? [
          {
            ...step({
              bank: { ...first.bank, id: first.bank.of ?? first.bank.id },
              cut: 'level',
              copy: '1',
              name: 'Case',
              what: 'level',
              which: 'shims under the low feet, anchored, then tried again',
              after: [first, ...rest].flatMap(({ steps }) =>
                steps.filter((s) => s.what === 'hang').map((s) => s.id),
              ),
            }),
            id,
          },
        ]
      : [],
  );
}

function fronts(bank: BankWork, cuts: ReadonlyMap<string, readonly string[]>): readonly Operation[] {
  const columns = [...new Set(bank.drawers.map((d) => d.column))];
  return columns.flatMap((column) => {
    let before: readonly string[] = [];
    return bank.fitOrder.flatMap((no) => {
      const drawer = bank.drawers.find((d) => d.no === no && d.column === column);
      if (!drawer) return [];
      const own = cuts.get(drawer.front) ?? [];
      const on = step({
        bank,
        cut: 'fronton',
        copy: copyOf(drawer),
        name: drawer.frontName,
        what: 'front-on',
        which: 'on its shims, screwed from inside; then measure its far edge',
        after: [levelId(bank), ...own, ...before],
      });
      before = [on.id];
      return [on, ...drilled(bank, drawer, on.id)];
    });
  });
}

function drilled(bank: BankWork, drawer: DrawerWork, after: string): readonly Operation[] {
  const pull = bank.pulls.find((p) => p.column === drawer.column);
  if (!pull) return [];
  const { x, words } = pull;
  const own = step({
    bank,
    cut: 'pulls',
    copy: copyOf(drawer),
    name: drawer.frontName,
    what: 'pulls',
    which: words,
    after: [after],
  });
  const setup = setupOf({ machine: 'jig', sets: 'from-end', figure: x, on: { at: 'end-of-front' } });
  return [{ ...own, setup, figure: x.value }];
}
