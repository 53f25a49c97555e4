import { fromMillimetres, type Length } from '../../length/length';
import type { Label, LabelSet } from '../../plan/label-plan';
import { type PartSides, partSides } from '../../plan/part-sides';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import type { CopyName } from '../../trade/carcass/part-name';
import { type Block, gap, stacked, textBlock } from '../../ui/paper/flow';
import { line, onPage, type Page, type Spot, textAt, type WidthOf } from '../../ui/paper/ink';
import { contents, place, setName } from '../shared/label-words';
import { partWord } from '../shared/part-words';
import * as words from './label-print-words';

/** A label to print: what it is of, and what stands on it in so much room. */
export type LabelDrawn = {
  readonly name: string;
  readonly block: (room: { readonly wide: number; readonly widthOf: WidthOf }) => Block;
};

/** The smallest text of a label, millimetres. */
const least = 4;

/** A label for each piece of each part. */
export const partLabels = (plan: Plan): readonly LabelDrawn[] =>
  plan.parts.flatMap((part) => copiesOf(part).map((copy) => partLabel(plan, part, copy)));

const hands: readonly CopyName[] = ['left', 'right'];

function copiesOf({ copies, pair }: Part): readonly (CopyName | undefined)[] {
  if (copies === 1) return [undefined];
  return pair ? hands : Array.from({ length: copies }, (_, k) => k + 1);
}

function partLabel(plan: Plan, part: Part, copy: CopyName | undefined): LabelDrawn {
  const name = partWord(part.name, copy);
  const sides = partSides(plan, part);
  const stuff = plan.stuff.find((s) => s.id === part.stuff)?.name;
  return {
    name,
    block: ({ wide, widthOf }) => {
      const at = { wide, widthOf };
      const says = (text: string | undefined, high = least, bold?: true) =>
        text ? [textBlock({ text, high, ...(bold ? { bold } : {}) }, at)] : [];
      return stacked([
        ...says(sides.edge && words.edge(sides.edge)),
        ...says(name, 4.6, true),
        ...says(words.size(part, plan.job.tape), 5),
        ...says(stuff),
        ...says(words.lies(sides)),
        endBlock(sides, wide),
      ]);
    },
  };
}

/** The reference end, with an arrow to the side it is at. */
function endBlock(sides: PartSides, wide: number): Block {
  const { endAt } = sides;
  const text = words.end(sides);
  const high = least * 1.7;
  return {
    high,
    ink: ([x, y]) => {
      const [base, middle] = [y + least * 1.25, y + least * 0.8];
      if (!endAt) return [textAt([x, base], text, { high: least })];
      const tip: Spot = [endAt === 'left' ? x : x + wide, middle];
      const back = endAt === 'left' ? 1 : -1;
      return [
        line(tip, [tip[0] + back * 9, middle], 0.5),
        line(tip, [tip[0] + back * 2.5, middle - 1.3], 0.5),
        line(tip, [tip[0] + back * 2.5, middle + 1.3], 0.5),
        textAt([tip[0] + back * 11, base], text, {
          high: least,
          ...(endAt === 'right' ? { align: 'right' as const } : {}),
        }),
      ];
    },
  };
}

/** A label for each drawer, tray and loaded shelf, with what goes in. */
export const drawerLabels = (sets: readonly LabelSet[]): readonly LabelDrawn[] =>
  sets.flatMap((set) => set.labels.map((label) => drawerLabel(set, label)));

const drawerLabel = (set: LabelSet, label: Label): LabelDrawn => ({
  name: place(label),
  block: (at) =>
    stacked([
      textBlock({ text: place(label), high: 5, bold: true }, at),
      textBlock({ text: contents(label), high: least }, at),
      gap(1),
      textBlock({ text: setName(set), high: least }, at),
    ]),
});

/** Labels on their sheets, all lengths inches. */
type LabelSheets = {
  readonly wide: Length;
  readonly high: Length;
  readonly label: { readonly wide: Length; readonly high: Length };
  readonly spots: readonly { readonly across: Length; readonly down: Length }[];
  readonly widthOf: WidthOf;
};

/** White inside a label, millimetres. */
const inside = 2.5;

/** The first label whose words want more height than it has, and how much more, to the next millimetre. Inches. */
export function tooHigh(
  labels: readonly LabelDrawn[],
  { label, widthOf }: Pick<LabelSheets, 'label' | 'widthOf'>,
): { readonly name: string; readonly by: Length } | undefined {
  const room = { wide: onPage(label.wide) - 2 * inside, widthOf };
  const has = onPage(label.high) - 2 * inside;
  for (const one of labels) {
    const by = one.block(room).high - has;
    if (by > 0.001) return { name: one.name, by: fromMillimetres(BigInt(Math.ceil(by))) };
  }
  return undefined;
}

/** The pages of labels, each with a thin line round it, made one by one. */
export function* labelPages(labels: readonly LabelDrawn[], sheets: LabelSheets): Generator<Page> {
  const { spots, label, widthOf } = sheets;
  const [wide, high] = [onPage(label.wide), onPage(label.high)];
  for (let from = 0; from < labels.length; from += spots.length) {
    const ink = spots.flatMap(({ across, down }, k) => {
      const one = labels[from + k];
      if (!one) return [];
      const [x, y] = [onPage(across), onPage(down)];
      const block = one.block({ wide: wide - 2 * inside, widthOf });
      return [
        { draw: 'box', at: [x, y], wide, high, line: 0.15 } as const,
        ...block.ink([x + inside, y + inside]),
      ];
    });
    yield { wide: onPage(sheets.wide), high: onPage(sheets.high), ink };
  }
}
