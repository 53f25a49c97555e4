import type { Rounded } from '../../length/round';
import { type Tape, unitsOf } from '../../length/tape';
import type { Units } from '../../length/units';
import { remainder, writeLength } from '../../length/write';
import type { Stick, StickSpan } from '../../plan/sticks-of';
import { callGroove } from '../shared/groove-name';
import { boardWord, partWord } from '../shared/part-words';

/** What a stick is of, as its sheet and the list call it. */
export function stickName({ about }: Pick<Stick, 'about'>): string {
  switch (about.is) {
    case 'face':
      return `${boardWord(about.of, 'Board')}${about.face ? `, face ${about.face}` : ''}`;
    case 'height':
      return `${about.named || 'Case'}: height${about.bay ? `, bay ${about.bay}` : ''}`;
    case 'width':
      return `${about.named || 'Case'}: width`;
    case 'fronts':
      return `${about.named || 'Drawers'}: fronts`;
  }
}

/** The end a stick is read from. */
export function endName({ about }: Pick<Stick, 'about'>): string {
  switch (about.is) {
    case 'face':
      return about.of.end || 'reference end';
    case 'height':
      return 'lower end of the case';
    case 'width':
      return 'left of the case';
    case 'fronts':
      return about.end === 'top' ? 'top of the opening' : 'bottom of the opening';
  }
}

/** @example markText({ value: 20 5/16, rest: 1/128 }, '1/32') // '20 5/16 strong 0.008' */
export function markText({ value, rest }: Rounded, tape: Tape): string {
  const left = remainder(rest, tape);
  return `${writeLength(value, tape)}${left ? ` ${left.word}${left.by ? ` ${left.by}` : ''}` : ''}`;
}

/** What stands or is cut there. */
export const spanName = (span: StickSpan, { about }: Pick<Stick, 'about'>): string =>
  span.is === 'part' ? partWord(span.name) : about.is === 'face' ? callGroove(about.layout, span.groove) : '';

/** The lap after sheet n + 1, its first line and its second: the same on both sheets. */
export const lapName = (n: number, second: number): string => `${n + 1}${second === 0 ? 'a' : 'b'}`;

const bar: Readonly<Record<Units, string>> = { in: '4 in', mm: '100 mm' };
export const barAlong = (tape: Tape): string => `${bar[unitsOf(tape)]} along`;
export const barAcross = (tape: Tape): string => `${bar[unitsOf(tape)]} across`;

type Said = { readonly text: string; readonly high: number; readonly bold?: true };

type SheetAt = {
  readonly stick: Stick;
  readonly tape: Tape;
  readonly job: string;
  readonly day: string;
  readonly sheet: number;
  readonly sheets: number;
};

/** What stands beside the stick on each sheet. */
export function sheetSays({ stick, tape, job, day, sheet, sheets }: SheetAt): readonly Said[] {
  const laps = sheets > 1;
  return [
    { text: stickName(stick), high: 4, bold: true },
    ...(job ? [{ text: job, high: 2.6 }] : []),
    { text: day, high: 2.6 },
    ...(laps ? [{ text: `Sheet ${sheet} of ${sheets}`, high: 4, bold: true as const }] : []),
    {
      text: `Arrow: ${endName(stick)}. Figures: ${unitsOf(tape) === 'in' ? 'inches' : 'millimetres'}.`,
      high: 2.6,
    },
    { text: `Whole stick ${markText(stick.long, tape)}`, high: 2.6 },
    { text: 'X is cut away. Grey is wood.', high: 2.6 },
    { text: 'Print at actual size, 100 %, no fitting to the page.', high: 2.6 },
    ...(laps
      ? [
          {
            text: 'Cut each sheet but the first along its line a. Lay it on line a of the sheet before, crosses on crosses.',
            high: 2.6,
          },
        ]
      : []),
    { text: 'Measure both bars with calipers, then the whole stick with the tape of the job.', high: 2.6 },
  ];
}
