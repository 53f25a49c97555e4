import type { ComponentChildren } from 'preact';
import type { Kind, ReckonError } from '../../length/evaluate';
import type { ParseError } from '../../length/parse-line';
import type { Note, ReadError } from '../../length/read';
import { assertNever } from '../../length/result';
import type { Tape } from '../../length/tape';
import { capital } from '../shared/capital';
import type { NotDone } from './not-done';

export const title = 'Figure';
export const back = 'Job';
export const undo = 'Undo';
export const sums = 'Sums';
export const keys = 'Keys';
export const type = 'Type';
export const tapeTitle = 'Read to the nearest';
export const tapeButton = (tape: Tape): string => `Read to ${tape}`;
export const toTape = (tape: ComponentChildren) => <>to {tape}</>;

/** A graduation in the list of them. */
export const tapeChoice = (tape: Tape): string =>
  tape === '0.001' ? '0.001 in, for cutters' : tape.includes('mm') ? tape : `${tape} in`;

// The sum in hand.

export const linesAbove = 'Lines above';
export const use = (line: string): string => `Use ${line}`;
export const changing = (line: string): string => `Changing ${line}: = writes over it.`;
export const takenAs = { count: 'counts', length: 'measures' } as const;
export const thickness = 't';
export const thicknessSaid = 't, a measured sheet';
export const sheetsTitle = 'Thickness of a sheet, as measured';
export const nameIt = 'Name it';
export const spokenBack = (mark: string, other: string): string => `${mark}; from the other end ${other}`;

// What it comes to.

export const anArea = 'square inches: an area, not a mark';
export const aCount = 'a count, not a mark';
export const timesAnd = (left: ComponentChildren) => <>times, and {left} left over</>;
export const underNothing = 'less than 0';
export const exactly = 'exactly';
export const about = 'about';
export const otherEndOf = (length: string): string => `from the other end of ${length}`;
export const pastIt = (by: string): string => `past it by ${by}`;

// The keys, as they are spoken.

export const brackets = 'brackets';
export const undoKey = 'undo';
export const erase = 'erase';
export const point = 'point';
export const feet = 'feet';
export const equals = 'equals';
export const signs = { '×': 'times', '÷': 'divided by', '−': 'minus', '+': 'plus' } as const;
export const scant = 'scant';
export const scantBy = (step: string): string => `scant, less ${step}`;
export const strong = 'strong';
export const strongBy = (step: string): string => `strong, more ${step}`;

/** The key of the unit a figure is not in. */
export const unitKey = { mm: 'mm', in: 'inch' } as const;

// A sum typed.

export const typeIt = 'Type it as you would write it';
export const toStrip = 'To the strip';
export const readAs = 'Read as';

// The strip of lines.

export const strip = 'Strip';
export const share = 'Share';
export const stripHint = (lines: number): string =>
  lines === 0
    ? 'Each sum you finish with = stands here.'
    : 'Tap a line to use it in the next one. Change a line and every line built on it follows.';
export const newStrip = 'New strip';
export const addTheLot = 'Add the lot';
export const measuredBack = 'answers are measured back from it';

export const useIt = 'Use it in the sum';
export const measureBack = (on: boolean): string =>
  on ? 'Stop measuring back from it' : 'Measure answers back from it too';

/** To change a line, and how many lines that are built on it follow. */
export const changeIt = (followers: number): string =>
  followers === 0
    ? 'Change it'
    : `Change it: ${followers === 1 ? 'one line follows' : `${followers} lines follow`}`;
export const strikeOut = 'Strike it out';

export const nameLine = 'Name this line';
export const lineName = 'Name';
export const draftName = 'Name of a line';
export const usualNames = ['Opening', 'Inside width', 'Side', 'Shelf', 'One bay', 'Reveal'] as const;

/** What a line is called where it is used: its name, else its place in the strip. */
export const lineCalled = (name: string, no: number): string => name || `line ${no}`;
export const lineGone = 'a line that is gone';
export const theLot = 'The lot';

/** Why a key did nothing, and what would. */
export function refusedText(why: NotDone): string {
  switch (why) {
    case 'too-many-digits':
      return 'Nine figures is the most.';
    case 'second-point':
      return 'There is a point already.';
    case 'decimal-has-no-fraction':
      return 'A decimal takes no fraction. Erase the point first.';
    case 'millimetres-have-no-fraction':
      return 'Millimetres take no fraction of an inch.';
    case 'feet-need-a-number':
      return 'Feet come after whole figures: 5 feet, then the inches.';
    case 'feet-already':
      return 'The feet are given already.';
    case 'nothing-to-move':
      return 'Scant and strong move a figure by one step. Give the figure first.';
    case 'nothing-to-erase':
      return 'Nothing to erase.';
    case 'nothing-to-close':
      return 'No bracket is open. Put a sign first to open one.';
    case 'figure-first':
      return 'A figure comes first.';
    case 'sign-first':
      return 'A sign comes first: + − × or ÷.';
    case 'nothing-to-swap':
      return 'Only a bare number can count or measure.';
    case 'built-on-itself':
      return 'That line is built on the one being changed, so it cannot be used in it.';
    case 'strip-full':
      return 'Sixty lines fill a strip. Start a new one: undo brings this one back.';
    case 'sum-too-long':
      return 'The sum is too long for one line. Finish it with = and go on from there.';
    default:
      return assertNever(why);
  }
}

const kinds: Record<Kind, string> = { length: 'a length', number: 'a count', area: 'an area' };

/** Why a sum has no answer. `call` names a line of the strip. */
export function reckonText(error: ReckonError, call: (id: string) => string): string {
  switch (error.code) {
    case 'divide-by-nothing':
      return 'That divides by zero.';
    case 'kinds':
      return `${capital(kinds[error.a])} ${verbs[error.op]} ${kinds[error.b]} is nothing to mark. A bare number after × or ÷ counts; swap it if it should measure.`;
    case 'unknown-line':
      return 'A line this is built on is gone. Undo brings it back.';
    case 'ring':
      return `${capital(call(error.id))} is built on itself.`;
    case 'bad-figure':
      return `“${error.text}” is not a length.`;
    default:
      return assertNever(error);
  }
}

const verbs = { '+': 'plus', '−': 'less', '×': 'times', '÷': 'over' };

/** Why a typed line is not read yet; nothing for an empty one. */
export function parseText(error: ParseError, typed: string): string | undefined {
  switch (error.code) {
    case 'empty':
      return undefined;
    case 'too-long':
      return `That is too long to read: ${error.most} is the most.`;
    case 'bracket-not-closed':
      return 'A bracket is still open.';
    case 'bracket-not-open':
      return `The bracket after “${typed.slice(0, error.at).trim()}” was never opened.`;
    case 'figure-missing':
      return 'A figure is missing after the sign.';
    case 'sign-missing':
      return 'A sign is missing between two figures.';
    case 'bad-figure':
      return readText(error.error);
    default:
      return assertNever(error);
  }
}

/** Why a figure is not read; nothing for an empty one. */
function readText(error: ReadError): string | undefined {
  const { text } = error;
  switch (error.code) {
    case 'empty':
      return undefined;
    case 'not-a-length':
      return `“${text}” is not a length. Try 5 1/2, 5' 3/4 or 146 mm.`;
    case 'zero-denominator':
      return `“${text}” divides by zero.`;
    case 'two-points':
      return `“${text}” has two points.`;
    case 'two-fractions':
      return `“${text}” has two fractions in a row. Put a sign between them.`;
    case 'feet-after-inches':
      return `In “${text}” feet come after inches. Put them first.`;
    case 'no-denominator':
      return `“${text}” wants a figure under the line.`;
    case 'fraction-of-a-decimal':
      return `“${text}” has a decimal and then another figure. Use one or the other.`;
    case 'too-long':
      return 'That is too long for one length.';
    default:
      return assertNever(error.code);
  }
}

/** A second look at a figure that was read. */
export function noteText(note: Note, figure: string): string {
  switch (note.code) {
    case 'odd-denominator':
      return `${figure}: parts of ${note.denominator} stand on no tape.`;
    case 'negative':
      return `${figure} is less than 0.`;
    case 'comma-of-thousands':
      return `${figure}: the comma is a decimal point here. For a thousand leave it out.`;
    case 'over-120-inches':
      return `${figure} is more than ten feet.`;
    default:
      return assertNever(note);
  }
}
