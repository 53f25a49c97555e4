import type { OnMachine } from '../piece-on-machine';
import type { Block } from './flow';
import { type Ink, line, type Spot, textAt } from './ink';

/** How large a piece on its machine is drawn, millimetres. */
export const machineSize = { wide: 62, high: 19 };

const side = 4;
const top = 3.5;
const thick = 2.2;
const long = machineSize.wide - 2 * side;
const deep = machineSize.high - 2 * top;
const word = 2.6;

/** A piece on its machine as the card draws it: stop or fence black, the named edge grey, the cut a thick line. */
export const machineBlock = (on: OnMachine): Block => ({
  high: machineSize.high,
  ink: ([x, y]) => [
    ...bandOf(on, [x, y]),
    { draw: 'box', at: [x + side, y + top], wide: long, high: deep, line: 0.4 },
    ...blockOf(on, [x, y]),
    ...cutOf(on, [x, y]),
    wordOf(on, [x, y]),
  ],
});

function bandOf({ band, block }: OnMachine, [x, y]: Spot): readonly Ink[] {
  const along = { wide: long, high: thick };
  const at = {
    near: { at: [x + side, y + top + deep - thick] as const, ...along },
    far: { at: [x + side, y + top] as const, ...along },
    block: {
      at: [block === 'left' ? x + side : x + side + long - thick, y + top] as const,
      wide: thick,
      high: deep,
    },
  }[band];
  return [{ draw: 'box', ...at, grey: 0.6 }];
}

/** The fence of a sled, and the stop or rip fence; a guide lies on the piece and has none. */
function blockOf({ fence, guided, block }: OnMachine, [x, y]: Spot): readonly Ink[] {
  const fenceAt: Spot = [x, fence === 'near' ? y + top + deep : y + 0.5];
  return [
    ...(fence
      ? [{ draw: 'box', at: fenceAt, wide: machineSize.wide, high: top - 0.5, grey: 0.75 } as const]
      : []),
    ...(guided
      ? []
      : [
          {
            draw: 'box',
            at: [block === 'left' ? x : x + side + long, y + 1] as const,
            wide: side,
            high: deep + 5,
            grey: 0,
          } as const,
        ]),
  ];
}

/** Where the teeth run, or a row of holes. */
function cutOf({ block, blade, row, band }: OnMachine, [x, y]: Spot): readonly Ink[] {
  const at = block === 'left' ? x + side + blade * long : x + side + long - blade * long;
  if (row === undefined) return [line([at, y], [at, y + machineSize.high], 1)];
  const down = y + top + deep * (band === 'near' ? 1 - row : row);
  const count = Math.floor((long - 4) / 5) + 1;
  return Array.from({ length: count }, (_, k) => ({
    draw: 'box',
    at: [x + side + 2 + k * 5, down - 0.5],
    wide: 1,
    high: 1,
    grey: 0,
  }));
}

/** The edge by its name, beside its band, away from the block. */
function wordOf({ block, band, word: text }: OnMachine, [x, y]: Spot): Ink {
  const down = band === 'near' ? y + top + deep - thick - 1.4 : y + top + thick + word + 1.2;
  const at: Spot = [block === 'left' ? x + side + long - thick - 1.5 : x + side + thick + 1.5, down];
  return textAt(at, text, { high: word, ...(block === 'left' ? { align: 'right' as const } : {}) });
}
