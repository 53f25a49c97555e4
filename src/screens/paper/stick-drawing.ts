import { fromMillimetres, type Length } from '../../length/length';
import { type Tape, unitsOf } from '../../length/tape';
import type { Stick, StickSpan } from '../../plan/sticks-of';
import { barOf } from '../../trade/paper/bar';
import type { Tile } from '../../trade/paper/tiles';
import {
  type Ink,
  line,
  onPage,
  type Page,
  type Spot,
  textAt,
  type WidthOf,
  wrapped,
} from '../../ui/paper/ink';
import * as words from './stick-words';

/** A stick on its pages: sheets that lap, or one strip off a roll. */
type StickPrint = {
  readonly stick: Stick;
  readonly tape: Tape;
  /** Job and day, said on every sheet. */
  readonly job: string;
  readonly day: string;
  readonly page: { readonly wide: Length; readonly high: Length; readonly margin: Length };
  readonly tiles: readonly Tile[];
  readonly laps: readonly Tile[];
  /** On a strip off a roll the words stand below the stick, on a sheet beside it. */
  readonly below: boolean;
  readonly widthOf: WidthOf;
};

/** Across the stick, millimetres: the band, the X on the waste, the figures beside it. */
const band = { wide: 72, waste: 14, figures: 20 };

/** What a strip off a roll needs: across, and below the stick. Inches. */
export const stripNeeds = { band: fromMillimetres(106n), foot: fromMillimetres(230n) };
const figure = { high: 4, apart: 5.6 };
/** A name beside its figure, or on rows of its own under it. */
const name = { high: 2.6, apart: 3.6 };

/** Where a place of the stick stands on a sheet, millimetres down; nothing where it is on another. */
type DownOf = (x: Length) => number;

/** The pages of a stick: mark edge on the left, its reference end at the top of the first. */
export function stickPages(print: StickPrint): readonly Page[] {
  const { page, tiles } = print;
  return tiles.map((tile, k) => {
    const left = onPage(page.margin);
    const down: DownOf = (x) => left + onPage(x) - onPage(tile.from) - onPage(print.stick.from);
    const at: TileAt = { print, tile, k, left, down };
    return {
      wide: onPage(page.wide),
      high: onPage(page.high),
      ink: [...bandOf(at), ...spansOf(at), ...lapsOf(at), ...besideOf(at)],
    };
  });
}

type TileAt = {
  readonly print: StickPrint;
  readonly tile: Tile;
  readonly k: number;
  readonly left: number;
  readonly down: DownOf;
};

/** How far the tile reaches down the sheet, from its upper margin. */
const reach = ({ tile, left }: TileAt): { readonly top: number; readonly end: number } => ({
  top: left,
  end: left + onPage(tile.to) - onPage(tile.from),
});

/** Both edges of the band; a line across it where the stick begins and ends. */
function bandOf(at: TileAt): readonly Ink[] {
  const { print, k, left } = at;
  const { top, end } = reach(at);
  const right = left + band.wide;
  const last = k === print.tiles.length - 1;
  return [
    line([left, top], [left, end], 0.5),
    line([right, top], [right, end], 0.15),
    ...(k === 0 ? [line([left, top], [right, top], 0.5)] : []),
    ...reference(at),
    ...(last ? [line([left, end], [right, end], 0.5)] : []),
  ];
}

/** On every sheet an arrow to the end everything is measured from, beside the band: figures may reach over its edge. */
function reference(at: TileAt): readonly Ink[] {
  const x = at.left + band.wide + 11.5;
  const tip = reach(at).top + 1.5;
  return [
    line([x, tip], [x, tip + 12], 0.4),
    line([x, tip], [x - 1.6, tip + 3.5], 0.4),
    line([x, tip], [x + 1.6, tip + 3.5], 0.4),
  ];
}

/** Whether any of a span is on the sheet. */
const isOn = ({ from, to }: StickSpan, at: TileAt): boolean => {
  const { top, end } = reach(at);
  return at.down(to) >= top && at.down(from) <= end;
};

function spansOf(at: TileAt): readonly Ink[] {
  const { print } = at;
  const on = print.stick.spans.filter((span) => isOn(span, at));
  const near = on.filter((span) => at.down(span.from) >= reach(at).top - 0.01);
  return [...on.flatMap((span) => edgesOf(span, at)), ...figuresOf(near, at)];
}

/** Both edges of a span; the X of its waste, or the grey of wood. Cut off where the sheet ends. */
function edgesOf(span: StickSpan, at: TileAt): readonly Ink[] {
  const { left } = at;
  const { top, end } = reach(at);
  const [from, to] = [at.down(span.from), at.down(span.to)];
  const [upper, lower] = [Math.max(from, top), Math.min(to, end)];
  const right = left + band.waste;
  const inside: readonly Ink[] =
    span.is === 'groove'
      ? crossed([left, from], [right, to], [upper, lower])
      : [{ draw: 'box', at: [left, upper], wide: band.waste, high: lower - upper, grey: 0.85 }];
  const edges = [from, to].filter((y) => y >= top && y <= end);
  return [...inside, ...edges.map((y) => line([left, y], [left + band.figures - 2, y]))];
}

/** Two diagonals between corners, as much of them as lies between two heights. */
function crossed(
  [left, from]: Spot,
  [right, to]: Spot,
  [upper, lower]: readonly [number, number],
): readonly Ink[] {
  if (to - from < 0.01) return [];
  const x = (y: number) => left + ((right - left) * (y - from)) / (to - from);
  const mirrored = (y: number) => left + right - x(y);
  return [
    line([x(upper), upper], [x(lower), lower]),
    line([mirrored(upper), upper], [mirrored(lower), lower]),
  ];
}

/** The figures of the near edges, moved down where they would lie on each other, each with a line to its mark. */
function figuresOf(spans: readonly StickSpan[], at: TileAt): readonly Ink[] {
  const { print, left } = at;
  let free = Number.NEGATIVE_INFINITY;
  return spans.flatMap((span) => {
    const mark = at.down(span.from);
    const y = Math.max(mark, free);
    const x = left + band.figures;
    const said = words.markText(span.mark, print.tape);
    const low = y + figure.high / 2;
    const { rows, under } = nameOf(words.spanName(span, print.stick), said, print);
    const nameX = x + (under ? 2 : 5 + print.widthOf(said, figure.high, true));
    free = y + figure.apart + (under ? rows.length * name.apart : 0);
    return [
      line([x - 2, mark], [x + 1, y]),
      textAt([x + 2, low], said, { high: figure.high, bold: true }),
      ...rows.map((row, n) =>
        textAt([nameX, low + (under ? n + 1 : 0) * name.apart], row, { high: name.high }),
      ),
    ];
  });
}

/** A name beside its figure where the band is wide enough for both, or under it: it never lies over the band's edge. */
function nameOf(text: string, said: string, { widthOf }: StickPrint) {
  const room = band.wide - band.figures - 3;
  const width = (one: string) => widthOf(one, name.high);
  const under = widthOf(said, figure.high, true) + 3 + width(text) > room;
  return { rows: under ? wrapped(text, room, width) : [text], under };
}

/** A cross at both edges of the band, with the number of the lap, on both lines of each lap. */
function lapsOf(at: TileAt): readonly Ink[] {
  const { print, k, left } = at;
  const right = left + band.wide;
  return print.laps.flatMap((lap, n) => {
    if (n !== k && n !== k - 1) return [];
    return [lap.from, lap.to].flatMap((x, line2) => {
      const y = left + onPage(x) - onPage(at.tile.from);
      return [left, right].flatMap((edge) => [
        line([edge - 4, y], [edge + 4, y], 0.2),
        line([edge, y - 4], [edge, y + 4], 0.2),
        ...(edge === right ? [textAt([edge + 5, y + 1], words.lapName(n, line2), { high: 2.6 })] : []),
      ]);
    });
  });
}

/** Beside the band: what it is, which sheet, how to print and lap it, and the two bars. */
function besideOf(at: TileAt): readonly Ink[] {
  const { print, k, left } = at;
  const { below } = print;
  const x = below ? left : left + band.wide + 14;
  const wide = onPage(print.page.wide) - left - x;
  const says = words.sheetSays({ ...print, sheet: k + 1, sheets: print.tiles.length });
  let y = below ? reach(at).end + 12 : left + 5;
  const lines = says.flatMap(({ text, high, bold }): readonly Ink[] => {
    const rows = wrapped(text, wide, (one) => print.widthOf(one, high, bold));
    const drawn = rows.map((row, n) =>
      textAt([x, y + n * high * 1.7], row, { high, ...(bold ? { bold } : {}) }),
    );
    y += rows.length * high * 1.7 + high * 0.7;
    return drawn;
  });
  return [...lines, ...bars([x, y + 4], print)];
}

/** The bar a print is checked by, along the stick and across. */
function bars([x, y]: Spot, { tape }: StickPrint): readonly Ink[] {
  const long = onPage(barOf[unitsOf(tape)]);
  const tick = (a: Spot, b: Spot) => line(a, b, 0.2);
  return [
    tick([x, y], [x, y + long]),
    tick([x - 2, y], [x + 2, y]),
    tick([x - 2, y + long], [x + 2, y + long]),
    textAt([x + 4, y + long / 2], words.barAlong(tape), { high: 2.6 }),
    tick([x, y + long + 12], [x + long, y + long + 12]),
    tick([x, y + long + 10], [x, y + long + 14]),
    tick([x + long, y + long + 10], [x + long, y + long + 14]),
    textAt([x + 4, y + long + 9], words.barAcross(tape), { high: 2.6 }),
  ];
}
