import { type Block, beside, gap, stacked, textBlock } from '../../ui/paper/flow';
import { type Ink, line, type Spot, type WidthOf } from '../../ui/paper/ink';

/** A box to tick with its letter or code, and what it is for. Millimetres. */
type TickRow = {
  readonly code: string;
  readonly ticked: boolean;
  readonly says: string;
  readonly notes: readonly string[];
  /** It says a figure that is set. */
  readonly large?: true;
  /** How far the words stand from the box. */
  readonly to: number;
  readonly wide: number;
  readonly widthOf: WidthOf;
};

const box = 6;

/** @example rowOf({ code: 'B', ticked: false, says: 'Shelf 2: rip', notes: [], to: 20, wide: 160, widthOf }) */
export function tickRow({ code, ticked, says, notes, large, to, wide, widthOf }: TickRow): Block {
  const words = [
    textBlock({ text: says, high: large ? 5 : 3.4 }, { wide: wide - to, widthOf }),
    ...notes.map((text) => textBlock({ text, high: 2.8 }, { wide: wide - to, widthOf })),
  ];
  const whole = beside([
    [0, boxBlock(ticked)],
    [box + 2.5, textBlock({ text: code, high: 5, bold: true }, { wide, widthOf })],
    [to, stacked([gap(large ? 0 : 1), ...words])],
  ]);
  return { ...whole, high: Math.max(whole.high, box) + 2 };
}

const boxBlock = (ticked: boolean): Block => ({
  high: box,
  ink: ([x, y]) => [
    { draw: 'box', at: [x, y], wide: box, high: box, line: 0.4 },
    ...(ticked ? tick([x, y]) : []),
  ],
});

const tick = ([x, y]: Spot): readonly Ink[] => [
  line([x + 1.2, y + 3.2], [x + 2.6, y + 4.8], 0.7),
  line([x + 2.6, y + 4.8], [x + 5, y + 1.2], 0.7),
];
