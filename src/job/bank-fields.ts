import { type Bank, type Column, type Fitted, newBank } from '../trade/fronts/bank';
import { byStock, type Read } from './by-stock';
import { amount, count, few, flag, length, oneOf, stockId, text } from './kinds';
import { placedFields } from './loads-fields';

export const bankFields = {
  name: text(120),
  of: stockId,
  bay: few,
  over: stockId,
  across: few,
  width: length,
  height: length,
  depth: length,
  sill: length,
  fit: oneOf('inset', 'overlay'),
  count: few,
  top: length,
  between: length,
  bottom: length,
  side: length,
  gap: length,
  share: oneOf('equal', 'step', 'ratio', 'weights'),
  step: length,
  ratio: amount,
  alike: flag,
  contentsFirst: flag,
  order: oneOf('down', 'up'),
  goes: oneOf('fronts', 'gaps', 'last'),
  fromBlank: flag,
  trim: length,
  band: length,
  frontStock: stockId,
  sideStock: stockId,
  boxFrontStock: stockId,
  boxBackStock: stockId,
  boxBottomStock: stockId,
  slideLong: length,
  slideHigh: length,
  clearance: length,
  centre: length,
  boxUp: length,
  rating: amount,
  boxDeep: length,
  lap: length,
  backDado: length,
  behind: length,
  grooveDeep: length,
  grooveUp: length,
  grooveFit: length,
  ease: length,
  play: length,
  bottomHow: oneOf('captured', 'slid-in'),
  tailsHow: oneOf('free', 'template'),
  tails: few,
  halfPin: length,
  pin: length,
  slope: amount,
  pitch: length,
  pulls: few,
  /** Screws that hold one front from inside its box. */
  frontScrews: few,
  centres: length,
  fromEnd: length,
  fromTop: length,
  gone: flag,
};

export const frontFields = { high: length, weight: amount, boxHigh: length, stick: length };

export const columnFields = {
  front: length,
  back: length,
  left: length,
  right: length,
  usedFront: length,
  usedBack: length,
  usedLeft: length,
  usedRight: length,
};

export const fittedFields = {
  left: length,
  right: length,
  usedLeft: length,
  usedRight: length,
  held: length,
  trim: length,
};

/** A thing that goes into a drawer, or onto a shelf; `heavy` is pounds. */
export const thingFields = {
  name: text(120),
  tall: length,
  long: length,
  heavy: amount,
  count,
  bank: stockId,
  front: few,
  /** Of several columns, from the left; the first where none is said. */
  column: few,
  ...placedFields,
  gone: flag,
};

/** A bank of its fields as read: what each piece is of is gathered into one list. */
export const bankOf = (id: string, own: Read, under: Pick<Bank, 'fronts' | 'columns'>): Bank => ({
  ...newBank(id),
  ...byStock(own),
  ...under,
});

/** Numbers of a list kept under names like `f3`: the letter is left off. */
export const byNumber = <T>(list: Readonly<Record<string, T>>): Readonly<Record<number, T>> =>
  Object.fromEntries(Object.entries(list).map(([key, value]) => [Number(key.slice(1)), value]));

/** A column of its fields as read. */
export const columnOf = (own: Omit<Column, 'fitted'>, fitted: Readonly<Record<string, Fitted>>): Column => ({
  ...own,
  fitted: byNumber(fitted),
});
