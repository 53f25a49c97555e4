import type { PlanSheet } from '../../job/job';
import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { PoolView } from '../../plan/breakdown';
import type { Part } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { SheetStock } from '../../trade/sheets/stock';
import { capital } from '../shared/capital';
import { setupTitle } from '../shared/setup-title';
import * as sheet from '../shared/sheet-words';
import { bySize } from '../shared/size-words';

export const byPart = 'Cut list by part';
/** What stands under the name of a list, on each page. */
export const under = (job: string, day: string, page: number): string =>
  [job, day, `page ${page}`].filter(Boolean).join(' · ');

/** Both sizes of a part as they are marked, the long one first. */
export const sizes = ({ length, width }: Part, tape: Tape): string =>
  bySize(writeMark(length.mark, tape), writeMark(width.mark, tape));
export const goesOn = (name: string): string => `${name}, continued`;

/** What is set for a cut of a part. */
export function setTo(op: Operation, tape: Tape): string {
  const { figure } = op.setup;
  return `${setupTitle(op)}${figure ? ` ${writeMark(figure, tape)}` : ''}`;
}

export const sheetName = (one: PlanSheet, stock: SheetStock | undefined, tape: Tape): string =>
  `${sheet.sheetTitle(one, stock, tape)}, ${stock?.name ?? ''}`;
export const sheetSize = (one: PlanSheet, stock: SheetStock | undefined, tape: Tape): string => {
  const grain = sheet.grains[one.left ? 'long' : (stock?.grain ?? 'long')];
  return `${sheet.sizeWords(one.size, tape)}${stock?.kind === 'stick' ? '' : `, ${grain}`}`;
};
export const pieces = 'Pieces, numbered down from the upper left';
export const piece = (name: string, size: string): string => `${name}, ${size}`;

type CutAt = { readonly tape: Tape; readonly name: (piece: string) => string };

/** What is set for a cut, from which edge. */
export const cutSays = (step: CutStep, tape: Tape): string =>
  `${sheet.cutTitle(step)} ${writeMark(step.figure, tape)} ${sheet.fromWords(step)}`;

/** Which side of a cut is kept, and what the other is. */
export function keeps(step: CutStep, { tape, name }: CutAt): string {
  const near = step.keep === 'near';
  const [kept, keptSize] = near ? [step.nearIs, step.near] : [step.farIs, step.far];
  const [other, otherSize] = near ? [step.farIs, step.far] : [step.nearIs, step.near];
  const kerf = step.tool === 'guide' ? sheet.kerfSide(near) : '';
  const rest =
    other.is === 'waste'
      ? ''
      : `${sheet.otherSide(sheet.sideWords(other, name))} ${sheet.sizeWords(otherSize, tape)}`;
  return `${capital(sheet.sideWords(kept, name))} ${sheet.sizeWords(keptSize, tape)} ${sheet.kept}${kerf}${rest}`;
}

/** Where the edge of the guide lies for a cut along it. */
export function guide({ onKeep, onWaste }: CutStep, known: boolean, tape: Tape): string {
  const at = (mark: Rounded | undefined, on: string) => (mark ? [`${writeMark(mark, tape)} ${on}`] : []);
  const lies = [...at(onKeep, sheet.onKept), ...at(onWaste, sheet.onOther)];
  if (lies.length > 0) return `${sheet.guideAt} ${lies.join(', or ')}`;
  return known ? sheet.guideOff : sheet.guideUnknown;
}

/** Pieces that lie on no sheet of a stock. */
export const notLaid = ({ name }: PoolView, n: number): string =>
  `${name}: ${sheet.pieceCount(n)} not laid out yet: on no page.`;
export const sheetsDone = (n: number): string =>
  n === 1 ? 'One sheet is cut and left out.' : `${n} sheets are cut and left out.`;
/** @example oneSetting('2A', '2B') */
export const oneSetting = (one: string, other: string): string =>
  `Cuts of one number, as ${one} and ${other}, are made at one setting.`;
export const cutsOnly = 'Cuts too close to be numbered in the drawing stand in the list.';
