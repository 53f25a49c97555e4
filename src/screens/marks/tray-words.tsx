import type { ComponentChildren } from 'preact';
import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { TrayError } from '../../trade/grooves/tray';
import { leastBearingIn } from '../../trade/grooves/tray';
import { unitInHand } from '../../ui/unit-in-hand';
import { exactly } from '../shared/exact-words';

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
    Between sides {opening} apart, in grooves {depth ? exactly(depth) : '—'} deep, a tray {part} thick with{' '}
    {slack} of slack, the sides bowed out by {bow}.
  </>
);

export const depthFirst = 'Say how deep the grooves are first.';
export const trayWide = 'Tray width, rounded down so that it goes in';

/** How far the tray still sits in the far groove once it is shoved to one side. */
export const bearing = (bearing: Length, thin: boolean): string =>
  `Shoved to one side it still sits ${exactly(bearing)} in the far groove${thin ? `: under ${exactly(leastBearingIn(unitInHand()))} it may drop out.` : '.'}`;

export const clearBetween = (clear: Length): string =>
  `They drop to the lower edge: ${exactly(clear)} clear between trays, however wide the grooves.`;

/** What keeps a tray from being made for its grooves. */
export function errorText(error: TrayError): string {
  switch (error.code) {
    case 'no-width':
      return `The slack takes ${exactly(error.by)} more than there is.`;
    case 'not-positive':
      return error.what === 'opening' ? 'The sides must stand apart.' : 'The grooves must have a depth.';
    case 'slack-negative':
      return `Slack ${exactly(error.by)} below 0 would make the tray stick. Make it 0 or more.`;
    case 'bow-negative':
      return `A bow is 0 or more: if the sides come in by ${exactly(error.by)}, make the opening that much less.`;
    default:
      return assertNever(error);
  }
}
