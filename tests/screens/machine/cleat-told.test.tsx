import { describe, expect, test } from 'vitest';
import { editPutUp, editScrews } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { editRoom, editZone } from '../../../src/job/room-edits';
import { CleatTold } from '../../../src/screens/machine/cleat-told';
import { installId } from '../../../src/trade/setups/install-steps';
import { l } from '../../length/write-figures';
import { caseDecided } from '../../plan/carried-cabinet-case';
import { worked } from '../../plan/job-of';
import { hostTree, texts } from '../host-tree';

const shelf = { settings: { value: { 'shelf/screw/2~1~2': 1 } } } as never;

/** What a step tells of the screws that hold the case. */
function told(step: Parameters<typeof installId>[1], ...more: readonly Change[]): string {
  const { plan } = worked([...caseDecided, ...more]);
  const op = plan.byId.get(installId('case', step));
  if (!op) throw new Error(`no step ${step}`);
  return texts(hostTree(<CleatTold bench={shelf} plan={plan} op={op} />)).join('\n');
}

/** A strip of 3/4 × 3 behind 1/2 of board, 40 up: studs at 12 and 28, as in Example 7 of room. */
const strip = { cleatThick: l('3/4'), cleatWide: l('3'), cleatAt: l('40'), cover: l('1/2') } as const;
const wall = [
  ...editRoom({ found: l('11 1/4'), spacing: l('16'), cleatFrom: l('2'), cleatTo: l('38') }),
  ...editZone('z', { what: 'Pipe', from: l('50'), to: l('52') }),
];

describe('CleatTold', () => {
  test('how many screws, which, the drills, into which studs, how high: at the anchoring through a cleat in the case', () => {
    const said = told('anchor', ...wall, ...editPutUp('case', strip));
    expect(said).toContain(
      '2 screws, number 8, 2 1/2 long, through the cleat into the studs: at 12, 28 from the left end of the wall.',
    );
    expect(said).toContain('Drill 11/64 in the cleat and what is behind it, 1/8 in what the screw bites.');
    expect(said).toContain('The lower edge of the cleat: 40 up from the floor at its high point.');
  });

  test('the same of a cleat on the wall, and then the case to it', () => {
    const onWall = editPutUp('case', { ...strip, cleatOn: 'wall' });
    expect(told('cleat', ...wall, ...onWall)).toContain('2 screws, number 8, 2 1/2 long');
    expect(told('anchor', ...wall, ...onWall)).toBe(
      'Screws from the case into its cleat are not said: add them under Screws and anchors.',
    );
    const screws = editScrews('x', { kind: 'tocleat', of: 'case', through: l('2'), many: 4 });
    // through 2 into 3/4, bite 3/8: 2 3/8 to 2 3/4 - 1/8 = 2 5/8
    expect(told('anchor', ...wall, ...onWall, ...screws)).toBe(
      '4 screws, number 8, 2 1/2 long, through the case into its cleat.',
    );
  });

  test('what is not known is asked for', () => {
    const said = told('anchor', ...editPutUp('case', { cleatThick: l('3/4') }));
    expect(said).toContain('How many: see Screws and anchors.');
    expect(said).toContain('Say how high the cleat stands');
    expect(said).toContain('No places to keep off are said');
  });

  test('nothing at other steps, and of no cleat', () => {
    expect(told('level', ...editPutUp('case', strip))).toBe('');
    expect(told('anchor')).toBe('');
  });
});
