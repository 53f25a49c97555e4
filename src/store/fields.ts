import type { Length } from '../length/length';
import { fromStored, toStored } from '../length/stored';
import type { Json } from './entry';

/** How one field of a job is kept: read back to its value, or not readable. One table serves reading, writing, import. */
export type Field<T> = { readonly read: (json: Json) => T | undefined; readonly write: (value: T) => Json };

const text = (most: number): Field<string> => ({
  read: (json) => (typeof json === 'string' && json.length <= most ? json : undefined),
  write: (value) => value,
});

const oneOf = <T extends string>(...words: readonly T[]): Field<T> => ({
  read: (json) => words.find((word) => word === json),
  write: (value) => value,
});

const length: Field<Length> = {
  read: (json) => {
    const found = typeof json === 'string' ? fromStored(json) : undefined;
    return found?.ok ? found.value : undefined;
  },
  write: toStored,
};

const lengths: Field<readonly Length[]> = {
  read: (json) => {
    if (!Array.isArray(json) || json.length > 500) return undefined;
    const found = json.map((item: Json) => length.read(item));
    return found.every((x) => x !== undefined) ? found : undefined;
  },
  write: (value) => value.map(toStored),
};

/** Places in a list; one taken away leaves a gap (`null`), so that the others keep their numbers and their ticks. */
const places: Field<readonly (Length | undefined)[]> = {
  read: (json) => {
    if (!Array.isArray(json) || json.length > 500) return undefined;
    const found = json.map((item: Json) => (item === null ? null : length.read(item)));
    return found.includes(undefined) ? undefined : found.map((x) => x ?? undefined);
  },
  write: (value) => value.map((x) => (x === undefined ? null : toStored(x))),
};

const count: Field<number> = {
  read: (json) =>
    typeof json === 'number' && Number.isInteger(json) && json >= 0 && json <= 1000 ? json : undefined,
  write: (value) => value,
};

/** A handful: so many partitions or cleats nobody makes. */
const few: Field<number> = {
  read: (json) =>
    typeof json === 'number' && Number.isInteger(json) && json >= 0 && json <= 24 ? json : undefined,
  write: (value) => value,
};

const flag: Field<boolean> = {
  read: (json) => (typeof json === 'boolean' ? json : undefined),
  write: (value) => value,
};

const momentShape = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?Z$/;

/** A moment of ISO 8601 in UTC, one that a calendar has. */
export const isMoment = (word: string): boolean => momentShape.test(word) && !Number.isNaN(Date.parse(word));

/** A moment, or empty: none. */
const moment: Field<string> = {
  read: (json) => (typeof json === 'string' && (json === '' || isMoment(json)) ? json : undefined),
  write: (value) => value,
};

export const jobFields = {
  name: text(120),
  place: text(200),
  note: text(4000),
  tape: oneOf('1/16', '1/32', '1/64', '1 mm', '1/2 mm', '0.001'),
  deleted: moment,
  /** Key of the setup that stands on its machine. */
  standing: text(80),
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
  gone: flag,
};

/** Id of a stock. */
const stockId = text(24);

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
