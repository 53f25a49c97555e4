import type { Length } from '../../length/length';
import { zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import type { DrawerPlace, HungRole, Thing } from '../carcass/part-name';
import { installId, placeOfBank } from './install-steps';
import { type Operation, opId, type What } from './operation';
import { setupOf } from './setup';
import type { Which } from './which';

/** A drawer as its steps at the bench know it. */
type DrawerWork = {
  readonly no: number;
  readonly column: number;
  /** How it is told from the others. */
  readonly place: DrawerPlace;
  /** Parts of its box; the part that is its front. */
  readonly box: readonly string[];
  readonly front: string;
};

/** What the steps of a bank of drawers are made of. Inches. */
export type BankWork = {
  readonly id: string;
  /** The case it stands in, and whether that has a face frame. */
  readonly of?: string | undefined;
  readonly framed: boolean;
  /** Fronts are fixed to the boxes when these are in; else they are the fronts of the boxes. */
  readonly frontsApart: boolean;
  /** Edges on the story stick, as marked from its `end`. */
  readonly marks: readonly {
    readonly id: string;
    readonly front: number;
    readonly edge: 'top' | 'bottom';
    readonly at: Length;
    readonly end: 'top' | 'bottom';
  }[];
  readonly drawers: readonly DrawerWork[];
  /** By drawer, longest first. */
  readonly sticks: readonly {
    readonly drawer: number;
    readonly length: Rounded;
    readonly as?: 'kicker';
  }[];
  /** What boxes hang on where that is no slide. */
  readonly hung?: 'runner' | 'hangstrip' | undefined;
  /** Numbers of the fronts in the order they are fitted. */
  readonly fitOrder: readonly number[];
  /** By column: first hole from the end stop of the jig, and down; from both ends or from one. */
  readonly pulls: readonly {
    readonly column: number;
    readonly x: Rounded;
    readonly down: Rounded;
    readonly bothEnds: boolean;
  }[];
};

/** What must be done to the case before its openings can be measured for a bank. */
export const readyFor = (of: string | undefined, framed: boolean): readonly string[] =>
  of === undefined ? [] : [opId(`${of}~bench`, framed ? 'frameon' : 'dryfit', '1')];

const copyOf = ({ column, no }: DrawerWork): string => `c${column}d${no}`;

type Step = {
  readonly bank: BankWork;
  readonly cut: string;
  readonly copy: string;
  readonly on: Thing;
  readonly what: What;
  readonly which?: Which;
  readonly after: readonly string[];
};

const step = ({ bank, cut, copy, on, ...rest }: Step): Operation => ({
  id: opId(`${bank.id}~bench`, cut, copy),
  part: `${bank.id}~bench`,
  copy,
  name: { of: on },
  setup: setupOf({ machine: 'bench', on: { at: 'own', id: `${bank.id} ${rest.what}` } }),
  figure: zero,
  ...rest,
});

type Cuts = ReadonlyMap<string, readonly string[]>;

function cutsOf(all: readonly Operation[]): Cuts {
  const cuts = new Map<string, string[]>();
  for (const op of all) cuts.set(op.part, [...(cuts.get(op.part) ?? []), op.id]);
  return cuts;
}

/**
 * What is done to banks of drawers beside their cuts: story stick, boxes glued, slides on sticks longest first, boxes
 * hung. Then their case is put up (`install-steps.ts`), and the fronts go on.
 *
 * @param all operations on the parts, by which each step knows what comes first
 */
export function hungSteps(banks: readonly BankWork[], all: readonly Operation[]): readonly Operation[] {
  const cuts = cutsOf(all);
  return banks.flatMap((bank) => untilHung(bank, cuts));
}

/**
 * Fronts fitted one after another once their case stands level and anchored, and pulls drilled.
 *
 * @param all operations on the parts, by which each step knows what comes first
 */
export function frontSteps(banks: readonly BankWork[], all: readonly Operation[]): readonly Operation[] {
  const cuts = cutsOf(all);
  return banks.flatMap((bank) => fronts(bank, cuts));
}

function untilHung(bank: BankWork, cuts: Cuts): readonly Operation[] {
  const boxes = bank.drawers.map((drawer) =>
    step({
      bank,
      cut: 'boxup',
      copy: copyOf(drawer),
      on: { role: 'drawer', ...drawer.place },
      what: 'box-up',
      after: drawer.box.flatMap((part) => cuts.get(part) ?? []),
    }),
  );
  const slides = slidesOf(bank, cuts);
  const hang = bank.drawers.map((drawer) =>
    step({
      bank,
      cut: 'hang',
      copy: copyOf(drawer),
      on: { role: 'drawer', ...drawer.place },
      what: 'hang',
      ...(bank.hung ? { which: { is: 'in-wood' } } : {}),
      after: [
        opId(`${bank.id}~bench`, 'boxup', copyOf(drawer)),
        ...slides.filter((s) => s.copy.startsWith(`${copyOf(drawer)}h`)).map((s) => s.id),
      ],
    }),
  );
  return [...marksOf(bank), ...boxes, ...slides, ...hang, ...stopsOf(bank, cuts)];
}

/** Cuts of what a drawer hangs on. */
const hungCuts = (bank: BankWork, drawer: DrawerWork, role: HungRole, cuts: Cuts): readonly string[] =>
  cuts.get(`${bank.id}~${copyOf(drawer)}${role}`) ?? [];

/** What runs in wood falls out where nothing stops it: its blocks go on as soon as it hangs. */
const stopsOf = (bank: BankWork, cuts: Cuts): readonly Operation[] =>
  bank.hung
    ? bank.drawers.map((drawer) =>
        step({
          bank,
          cut: 'stopblock',
          copy: copyOf(drawer),
          on: { role: 'drawer', ...drawer.place },
          what: 'stop-block',
          after: [
            opId(`${bank.id}~bench`, 'hang', copyOf(drawer)),
            ...hungCuts(bank, drawer, 'stopblock', cuts),
          ],
        }),
      )
    : [];

function marksOf(bank: BankWork): readonly Operation[] {
  return bank.marks.map((mark) => ({
    ...step({
      bank,
      cut: `mark~${mark.id}`,
      copy: '1',
      on: { role: 'front', no: mark.front },
      what: 'marks',
      which: { is: 'edge', ...mark },
      after: readyFor(bank.of, bank.framed),
    }),
    setup: setupOf({ machine: 'stick', on: { at: 'story-stick', of: bank.id } }),
    figure: mark.at,
    opening: bank.id,
  }));
}

/** One stick, longest first: a length is finished when every column has both its slides on. */
function slidesOf(bank: BankWork, cuts: Cuts): readonly Operation[] {
  const ready =
    bank.of === undefined ? [] : [opId(`${bank.of}~bench`, bank.framed ? 'frameon' : 'glueup', '1')];
  let before: readonly string[] = ready;
  return bank.sticks.flatMap((stick) => {
    const own = bank.drawers
      .filter((d) => d.no === stick.drawer)
      .flatMap((drawer) =>
        (['left', 'right'] as const).map((hand) => onStick(bank, { stick, drawer, hand, cuts }, before)),
      );
    before = own.map((op) => op.id);
    return own;
  });
}

type OnStick = {
  readonly stick: BankWork['sticks'][number];
  readonly drawer: DrawerWork;
  readonly hand: 'left' | 'right';
  readonly cuts: Cuts;
};

/** A slide on its stick, or a runner, strip or kicker once it is cut. */
function onStick(bank: BankWork, at: OnStick, before: readonly string[]): Operation {
  const { stick, drawer, hand, cuts } = at;
  const as = stick.as ?? bank.hung;
  const { length } = stick;
  return {
    ...step({
      bank,
      cut: as ?? 'slide',
      copy: `${copyOf(drawer)}h${hand}`,
      on: { role: 'slide', hand, ...drawer.place, ...(as ? { as } : {}) },
      what: as ? 'runner' : 'slide',
      after: as ? [...before, ...hungCuts(bank, drawer, as, cuts)] : before,
    }),
    setup: setupOf({
      machine: 'stick',
      sets: 'stick-length',
      figure: length,
      on: { at: 'own', id: bank.id },
    }),
    figure: length.value,
    opening: bank.id,
  };
}

function fronts(bank: BankWork, cuts: Cuts): readonly Operation[] {
  if (!bank.frontsApart)
    return bank.drawers.flatMap((d) => drilled(bank, d, opId(`${bank.id}~bench`, 'boxup', copyOf(d))));
  const columns = [...new Set(bank.drawers.map((d) => d.column))];
  const place = placeOfBank(bank);
  const stands = installId(place, 'check-again');
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
        on: { role: 'front', ...drawer.place },
        what: 'front-on',
        after: [stands, ...own, ...before],
      });
      before = [on.id];
      return [on, ...drilled(bank, drawer, on.id)];
    });
  });
}

function drilled(bank: BankWork, drawer: DrawerWork, after: string): readonly Operation[] {
  const pull = bank.pulls.find((p) => p.column === drawer.column);
  if (!pull) return [];
  const { x, down, bothEnds } = pull;
  const own = step({
    bank,
    cut: 'pulls',
    copy: copyOf(drawer),
    on: { role: 'front', ...drawer.place },
    what: 'pulls',
    which: { is: 'holes', down, bothEnds },
    after: [after],
  });
  const setup = setupOf({ machine: 'jig', sets: 'from-end', figure: x, on: { at: 'end-of-front' } });
  return [{ ...own, setup, figure: x.value, placing: { face: { named: 'good', lies: 'up' } } }];
}
