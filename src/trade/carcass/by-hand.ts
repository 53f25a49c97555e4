import { type Length, zero } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Board } from '../grooves/board';
import { given } from '../sums/sum';
import { type Part, type Size, sizeAt } from './part';

const size = (what: 'length-given' | 'width-given', value: Length | undefined, tape: Tape): Size =>
  sizeAt(given(what, value ?? zero), tape);

/**
 * A board laid out by hand is a part like any other: ripped and cut to length where its sizes are given, grooved as
 * laid out. A size not given is 0, and is not cut.
 *
 * @example byHand(board, { tape: '1/32' }).copies // 2 for a pair
 */
export const byHand = (board: Board, { tape }: { readonly tape: Tape }): Part => ({
  id: board.id,
  of: '',
  name: { role: 'board', named: board.name },
  copies: board.made === 'pair' ? 2 : board.made === 'partition' ? 1 : board.copies,
  stock: undefined,
  stuff: board.stock || undefined,
  thickness: board.thickness,
  length: size('length-given', board.length, tape),
  width: size('width-given', board.across, tape),
  end: board.end,
  stage: 'carcass',
  board,
  rabbets: [],
  notches: [],
  laps: [],
  mates: board.made === 'pair' ? [board.id] : [],
  strip: false,
  comesOff: false,
  inFrame: false,
});
