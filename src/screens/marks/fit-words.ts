import { assertNever } from '../../length/result';
import { writeLength as w } from '../../length/write';
import type { FitError } from '../../trade/grooves/fit';
import type { TrayError } from '../../trade/grooves/tray';

/** What keeps a tray from being made for its grooves. */
export function trayErrorText(error: TrayError): string {
  switch (error.code) {
    case 'no-width':
      return `The slack takes ${w(error.by)} more than there is.`;
    case 'not-positive':
      return error.what === 'opening'
        ? 'The sides stand more than nothing apart.'
        : 'The grooves are more than nothing deep.';
    case 'slack-negative':
      return `Slack ${w(error.by)} under nothing would have the tray stick. Nothing or more.`;
    case 'bow-negative':
      return `A bow is nothing or more: sides that come in by ${w(error.by)} make the opening less.`;
    default:
      return assertNever(error);
  }
}

/** What keeps a groove from being fitted to a sheet. */
export function fitErrorText(error: FitError): string {
  switch (error.code) {
    case 'no-readings':
      return 'Put calipers on the sheet you will cut, near two corners and the middle, and give each reading.';
    case 'not-positive':
      return 'A thickness is more than nothing.';
    case 'clearance-negative':
      return `The groove would be ${w(error.by)} narrower than the sheet. A clearance is nothing or more.`;
    default:
      return assertNever(error);
  }
}
