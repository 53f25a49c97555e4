import { isNegative } from '../length/length';
import { fromStored, toStored } from '../length/stored';
import type { Branch, Way } from '../trade/sheets/tree';
import type { Json } from './entry';
import { count, type Field, flag, length, silent, stockId, text } from './kinds';

/** More cuts than any sheet gets, and deeper than any saw goes. */
const mostBranches = 4000;
const deepest = 400;

const pieceShape = /^[A-Za-z0-9~]{1,60}\/[A-Za-z0-9~]{1,60}$/;
const isWay = (json: Json | undefined): json is Way => json === 'rip' || json === 'cross';

type Left = { branches: number };

function readBranch(json: Json | undefined, left: Left, depth: number): Branch | undefined {
  left.branches -= 1;
  if (!Array.isArray(json) || left.branches < 0 || depth > deepest) return undefined;
  const [is, one, two, three] = json;
  if (json.length === 1 && (is === 'left' || is === 'waste')) return { is };
  if (is === 'piece') {
    const shaped = typeof one === 'string' && pieceShape.test(one);
    return shaped && (json.length === 2 || (json.length === 3 && two === 'turned'))
      ? { is, piece: one, turned: two === 'turned' }
      : undefined;
  }
  if (json.length !== 4 || !isWay(is) || typeof one !== 'string') return undefined;
  const at = fromStored(one);
  const near = readBranch(two, left, depth + 1);
  const far = readBranch(three, left, depth + 1);
  return at.ok && !isNegative(at.value) && near && far
    ? { is: 'cut', way: is, at: at.value, near, far }
    : undefined;
}

function writeBranch(branch: Branch): Json {
  if (branch.is === 'cut')
    return [branch.way, toStored(branch.at), writeBranch(branch.near), writeBranch(branch.far)];
  if (branch.is === 'piece') return ['piece', branch.piece, ...(branch.turned ? ['turned'] : [])];
  return [branch.is];
}

/** How a sheet falls apart: `["rip","71/4",near,far]`, `["piece","case~left/1"]`, `["left"]`, `["waste"]`. */
export const branchField: Field<Branch> = {
  read: (json) => readBranch(json, { branches: mostBranches }, 0),
  write: writeBranch,
};

/** A sheet, stick or offcut of the plan that was taken up. */
export const sheetFields = {
  stock: silent(stockId),
  /** Number of the sheet among those of its stock, from 1. */
  no: silent(count),
  /** The offcut it is cut from. */
  left: silent(text(24)),
  long: silent(length),
  wide: silent(length),
  kerf: silent(length),
  tree: silent(branchField),
  gone: silent(flag),
};

/**
 * What the search said of the plan of a stock: the fewest sheets any plan takes, whether this one takes no more, and
 * what it rests on.
 */
export const layoutFields = {
  least: silent(count),
  proved: silent(flag),
  rests: silent(text(24)),
};
