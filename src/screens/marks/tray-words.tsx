import type { ComponentChildren } from 'preact';
import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { writeLength } from '../../length/write';
import type { TrayError } from '../../trade/grooves/tray';

export const trayForGrooves = 'Tray for these grooves';
export const back = 'Back';

/** Titles of the blanks. */
export const titles = {
  opening: 'Clear opening between the sides',
  slack: 'Slack, both sides together',
  bow: 'Bow: extra opening at the worst place',
  part: 'Thickness of the trays',
} as const;

type SlipProps = { readonly [K in keyof typeof titles]: ComponentChildren } & {
  readonly depth: Length | undefined;
};

export const Slip = ({ opening, depth, part, slack, bow }: SlipProps) => (
  <>
    Between sides {opening} apart, in grooves {depth ? writeLength(depth) : '—'} deep, a tray {part} thick
    with {slack} of slack, the sides bowed out by {bow}.
  </>
);

export const depthFirst = 'Say how deep the grooves are first.';
export const trayWide = 'Tray width, rounded down so that it goes in';

/** How far the tray still sits in the far groove once it is shoved to one side. */
export const bearing = (bearing: Length, thin: boolean): string =>
  `Shoved to one side it still sits ${writeLength(bearing)} in the far groove${thin ? ': under 1/8 it may drop out.' : '.'}`;

export const clearBetween = (clear: Length): string =>
  `They drop to the lower edge: ${writeLength(clear)} clear between trays, however wide the grooves.`;

/** What keeps a tray from being made for its grooves. */
export function errorText(error: TrayError): string {
  switch (error.code) {
    case 'no-width':
      return `The slack takes ${writeLength(error.by)} more than there is.`;
    case 'not-positive':
      return error.what === 'opening' ? 'The sides must stand apart.' : 'The grooves must have a depth.';
    case 'slack-negative':
      return `Slack ${writeLength(error.by)} below 0 would make the tray stick. Make it 0 or more.`;
    case 'bow-negative':
      return `A bow is 0 or more: if the sides come in by ${writeLength(error.by)}, make the opening that much less.`;
    default:
      return assertNever(error);
  }
}
