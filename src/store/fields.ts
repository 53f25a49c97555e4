import { bankFields, columnFields, fittedFields, frontFields, thingFields } from './bank-fields';
import {
  amount,
  count,
  type Field,
  few,
  flag,
  length,
  lengths,
  moment,
  oneOf,
  places,
  silent,
  stockId,
  text,
} from './kinds';
import { layoutFields, sheetFields } from './sheet-fields';

export type { Field } from './kinds';
export { layoutFields, sheetFields } from './sheet-fields';

export const jobFields = {
  name: text(120),
  place: text(200),
  note: text(4000),
  tape: oneOf('1/16', '1/32', '1/64', '1 mm', '1/2 mm', '0.001'),
  deleted: silent(moment),
  /** Key of the setup that stands on its machine. */
  standing: silent(text(80)),
  /** Over on each way of a piece of sheet before its final cuts, and on the length of a piece of stick. */
  over: length,
  overStick: length,
  /** Pounds one person carries. */
  carry: amount,
  /** There is no table saw: every sheet is cut along the guide. */
  guideOnly: flag,
};

export const boardFields = {
  name: text(120),
  made: oneOf('alike', 'pair', 'partition'),
  copies: count,
  length,
  thickness: length,
  across: length,
  end: text(40),
  datum: length,
  mate: length,
  mateName: text(80),
  machine: oneOf('stop', 'fence', 'router', 'saw', 'spacers', 'index'),
  against: oneOf('reference', 'other'),
  grows: oneOf('toward', 'away'),
  guide: oneOf('reference', 'far'),
  stopSide: oneOf('left', 'right'),
  cutter: length,
  gone: flag,
};

export const runFields = {
  spacing: oneOf('pitch', 'fill', 'openings', 'given'),
  face: oneOf('A', 'B'),
  point: oneOf('near', 'centre', 'far'),
  width: length,
  depth: length,
  count,
  pitch: length,
  first: length,
  endRoom: length,
  centred: flag,
  span: length,
  part: length,
  at: places,
  stopped: length,
  gone: flag,
};

export const wideFields = { face: oneOf('A', 'B'), near: length, width: length, depth: length, gone: flag };

export const stockFields = {
  name: text(120),
  kind: oneOf('sheet', 'stick'),
  readings: lengths,
  /** Thickness reckoned with until it is measured. */
  planned: length,
  /** The reading taken up: what is not cut yet is reckoned with it. */
  used: length,
  long: length,
  wide: length,
  /** Cut off every edge of a sheet, both ends of a stick. */
  trim: length,
  grain: oneOf('long', 'wide', 'none'),
  /** At hand. */
  have: count,
  /** No more are to be had. */
  noMore: flag,
  price: amount,
  /** The stock whose parts may come out of it too. */
  like: stockId,
  /** Bad places of a stick: from, to, from, to … */
  bad: lengths,
  /** Thickness solid wood is bought in. */
  rough: length,
  gone: flag,
};

export const caseFields = {
  name: text(120),
  hold: oneOf('outside', 'openings'),
  width: length,
  height: length,
  depth: length,
  opening: length,
  clear: length,
  feet: length,
  partitions: few,
  bays: places,
  sideStock: stockId,
  bottomStock: stockId,
  topStock: stockId,
  partitionStock: stockId,
  shelfStock: stockId,
  trayStock: stockId,
  backStock: stockId,
  cleatStock: stockId,
  frameStock: stockId,
  looseStock: stockId,
  edgingStock: stockId,
  toeStock: stockId,
  baseStock: stockId,
  crossStock: stockId,
  hasTop: flag,
  hasBack: flag,
  hasFrame: flag,
  hasLooseTop: flag,
  hasEdging: flag,
  hasToe: flag,
  hasBase: flag,
  dado: length,
  partitionDado: length,
  topRabbet: length,
  backDeep: length,
  backWide: length,
  ease: length,
  fit: length,
  cleats: few,
  cleatWide: length,
  cleatRabbet: length,
  cleatRabbetWide: length,
  notchDeep: length,
  overhang: length,
  stile: length,
  middle: length,
  topRail: length,
  bottomRail: length,
  stilesOff: flag,
  middleOff: flag,
  looseFront: length,
  looseSide: length,
  lip: length,
  mitres: count,
  toeBack: length,
  crosses: few,
  crossWide: length,
  gone: flag,
};

export const insideFields = {
  kind: oneOf('trays', 'fixed', 'loose', 'rail'),
  bay: count,
  count,
  at: length,
  first: length,
  pitch: length,
  endRoom: length,
  width: length,
  depth: length,
  slack: length,
  wide: length,
  gone: flag,
};

export const builtFields = { frontA: length, frontB: length, backA: length, backB: length, used: length };

/** How a part's grooves are cut. */
export const partFields = {
  machine: boardFields.machine,
  against: boardFields.against,
  grows: boardFields.grows,
  guide: boardFields.guide,
  stopSide: boardFields.stopSide,
  cutter: boardFields.cutter,
  /** Which way it lies on a sheet, and with what it shares one. */
  lies: oneOf('along', 'across', 'free'),
  share: oneOf('anywhere', 'A', 'B', 'C', 'D'),
};

/** One copy of a part: what it came to when its size is not the one wanted. */
export const pieceFields = { asLength: length, asWidth: length };

/** Which making of a copy was spoiled is a thing of its own: two phones never count one for the other. */
export const spoilFields = { spoiled: flag };

/** How wide a groove was cut for what stands in it, and how deep, beside the tick that keeps where. */
export const widthFields = { width: length, depth: length };

/** An operation added by hand. */
export const workFields = {
  part: text(60),
  name: text(80),
  machine: oneOf('rip', 'crosscut', 'stop', 'fence', 'router', 'saw', 'hand', 'bench'),
  figure: length,
  cutter: length,
  height: length,
  after: text(24),
  gone: flag,
};

/** What was found out at a setup; it stays for ever. */
export const recipeFields = {
  /** Pieces between the outers, as `n/d` texts, one a piece. */
  stack: lengths,
  scale: length,
  height: length,
  got: length,
  note: text(400),
};

/** Why a blocked operation was let go ahead. */
export const letFields = { why: text(200) };

export const offcutFields = { stock: stockId, length, width: length, gone: flag };

/** What a table's fields read to; a field that is missing or not readable is undefined. */
export type Values<T> = { readonly [K in keyof T]: T[K] extends Field<infer V> ? V | undefined : never };

const idShape = /^[a-z0-9]{1,24}$/;
export const isId = (word: string | undefined): word is string => word !== undefined && idShape.test(word);

/** A part, a copy, a cut or a setup: ids joined by `~`. */
const keyShape = /^[A-Za-z0-9~]{1,60}$/;
const isKey = (word: string | undefined): word is string => word !== undefined && keyShape.test(word);

/** Words that name the parts of a case and the grooves in them: a thing in a bay has an id of its own. */
const named =
  /^(left|right|bottom|top|back|cleat|stile|middle|railtop|railbottom|toe|loose|edge(front|left|right)|base(rail|cross)|bench|partition\d*|p\d+)$/;
const isOwnId = (word: string | undefined): word is string => isId(word) && !named.test(word);

/** A front of a bank, from the top; a column, from the left. */
const isFront = (word: string | undefined): word is string =>
  word !== undefined && /^f([1-9]|1\d|2[0-4])$/.test(word);
const isColumn = (word: string | undefined): word is string =>
  word !== undefined && /^c([1-9]|1\d|2[0-4])$/.test(word);

/** Which making of a copy: `g1` the first. */
const isMaking = (word: string | undefined): word is string => word !== undefined && /^g[1-9]\d?$/.test(word);

type Shape = {
  readonly ids: readonly ((word: string | undefined) => word is string)[];
  readonly fields: object;
  /** Tables that hang under each thing of this one. */
  readonly under?: Readonly<Record<string, Shape>>;
};

/** Every table of a job: what its ids look like, its fields, and the tables under it. */
const tables: Readonly<Record<string, Shape>> = {
  stock: { ids: [isId], fields: stockFields },
  offcuts: { ids: [isId], fields: offcutFields },
  sheets: { ids: [isId], fields: sheetFields },
  layouts: { ids: [isId], fields: layoutFields },
  work: { ids: [isId], fields: workFields },
  recipes: { ids: [isKey], fields: recipeFields },
  let: { ids: [isKey, isKey, isKey], fields: letFields },
  parts: {
    ids: [isKey],
    fields: partFields,
    under: {
      pieces: {
        ids: [isKey],
        fields: pieceFields,
        under: { spoils: { ids: [isMaking], fields: spoilFields } },
      },
    },
  },
  widths: { ids: [isKey, isKey, isKey], fields: widthFields },
  banks: {
    ids: [isId],
    fields: bankFields,
    under: {
      fronts: { ids: [isFront], fields: frontFields },
      columns: {
        ids: [isColumn],
        fields: columnFields,
        under: { fitted: { ids: [isFront], fields: fittedFields } },
      },
    },
  },
  things: { ids: [isId], fields: thingFields },
  boards: {
    ids: [isId],
    fields: boardFields,
    under: { runs: { ids: [isId], fields: runFields }, wides: { ids: [isId], fields: wideFields } },
  },
  cases: {
    ids: [isId],
    fields: caseFields,
    under: { inside: { ids: [isOwnId], fields: insideFields }, built: { ids: [isId], fields: builtFields } },
  },
};

/** The field a path names, or undefined when the path is none of a job's. */
export function fieldAt(path: string): Field<unknown> | undefined {
  const [kind, ...rest] = path.split('/');
  if (kind === undefined) return undefined;
  if (rest.length === 0) return own(jobFields, kind);
  return Object.hasOwn(tables, kind) ? within(tables[kind], rest) : undefined;
}

function within(shape: Shape | undefined, path: readonly string[]): Field<unknown> | undefined {
  if (!shape?.ids.every((is, k) => is(path[k]))) return undefined;
  const [name, ...rest] = path.slice(shape.ids.length);
  if (rest.length === 0) return own(shape.fields, name);
  return name !== undefined && shape.under && Object.hasOwn(shape.under, name)
    ? within(shape.under[name], rest)
    : undefined;
}

function own(table: object, name: string | undefined): Field<unknown> | undefined {
  return name !== undefined && Object.hasOwn(table, name)
    ? (table as Record<string, Field<unknown>>)[name]
    : undefined;
}
