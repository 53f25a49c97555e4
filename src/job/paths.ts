import { bankFields, columnFields, fittedFields, frontFields, thingFields } from './bank-fields';
import {
  badFields,
  bayFields,
  boardFields,
  builtFields,
  caseFields,
  type Field,
  insideFields,
  jobFields,
  layoutFields,
  letFields,
  offcutFields,
  partFields,
  pieceFields,
  placeFields,
  readingFields,
  recipeFields,
  runFields,
  sheetFields,
  spoilFields,
  stockFields,
  wideFields,
  widthFields,
} from './fields';
import { jointFields, workFields } from './hand-fields';
import { joinFields, kerfFields, nextFields, putUpFields, screwFields } from './install-fields';
import { liftFields, shelfFields, solidFields } from './loads-fields';
import { ownNameFields } from './own-fields';
import { noteFields, pictureFields } from './place-fields';
import { printFields } from './print-fields';

import * as r from './room-fields';
import { saidFields } from './said-fields';
import { timerFields } from './timer-fields';

/** Whether a word of a path is there and has a shape. */
const shaped =
  (shape: RegExp) =>
  (word: string | undefined): word is string =>
    word !== undefined && shape.test(word);

export const isId = shaped(/^[a-z0-9]{1,24}$/);

/** A part, a copy, a cut or a setup: ids joined by `~`. */
const isKey = shaped(/^[A-Za-z0-9~]{1,60}$/);
/** A place: a key after the word of its kind. */
const isPlace = shaped(/^[a-z]{3,6}(~[A-Za-z0-9~]{1,60})?$/);

/** Words that name the parts of a case and the grooves in them: a thing in a bay has an id of its own. */
const named =
  /^(left|right|bottom|top|back|cleat|stile|middle|railtop|railbottom|toe|nailer|loose|edge(front|left|right)|(base|plinth)(rail|cross)|bench|partition\d*|p\d+)$/;
const isOwnId = (word: string | undefined): word is string => isId(word) && !named.test(word);

/** A front of a bank, from the top; a column, from the left. */
const isFront = shaped(/^f([1-9]|1\d|2[0-4])$/);
const isColumn = shaped(/^c([1-9]|1\d|2[0-4])$/);

const isBay = shaped(/^b([1-9]|1\d|2[0-5])$/);

/** A foot of a case: which row, and which from the left. */
const isFoot = shaped(/^(front|middle|back)[1-9]$/);
const isSide = shaped(/^(left|right)$/);

/** Which making of a copy: `g1` the first. */
const isMaking = shaped(/^g[1-9]\d?$/);

type Shape = {
  readonly ids: readonly ((word: string | undefined) => word is string)[];
  readonly fields: object;
  /** Tables that hang under each thing of this one. */
  readonly under?: Readonly<Record<string, Shape>>;
};

/** Every table of a job: what its ids look like, its fields, and the tables under it. */
const tables: Readonly<Record<string, Shape>> = {
  stock: {
    ids: [isId],
    fields: stockFields,
    under: {
      reading: { ids: [isId], fields: readingFields },
      badplace: { ids: [isId], fields: badFields },
    },
  },
  offcuts: { ids: [isId], fields: offcutFields },
  sheets: { ids: [isId], fields: sheetFields },
  layouts: { ids: [isId], fields: layoutFields },
  machines: { ids: [isId], fields: ownNameFields },
  work: { ids: [isId], fields: workFields },
  joints: { ids: [isId], fields: jointFields },
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
      corner: { ids: [isId], fields: saidFields },
      fronts: { ids: [isFront], fields: frontFields },
      columns: {
        ids: [isColumn],
        fields: columnFields,
        under: { fitted: { ids: [isFront], fields: fittedFields } },
      },
    },
  },
  things: { ids: [isId], fields: thingFields },
  shelves: { ids: [isKey], fields: shelfFields },
  putup: { ids: [isId], fields: putUpFields },
  screws: { ids: [isId], fields: screwFields },
  joins: { ids: [isId], fields: joinFields },
  next: { ids: [isId], fields: nextFields },
  timers: { ids: [isId], fields: timerFields },
  prints: { ids: [isKey], fields: printFields },
  notes: { ids: [isPlace], fields: noteFields },
  pictures: { ids: [isId], fields: pictureFields },
  kerftest: { ids: [isId], fields: kerfFields },
  lifts: { ids: [isId], fields: liftFields },
  solid: { ids: [isKey], fields: solidFields },
  boards: {
    ids: [isId],
    fields: boardFields,
    under: {
      runs: { ids: [isId], fields: runFields, under: { place: { ids: [isId], fields: placeFields } } },
      wides: { ids: [isId], fields: wideFields },
    },
  },
  cases: {
    ids: [isId],
    fields: caseFields,
    under: {
      inside: { ids: [isOwnId], fields: insideFields },
      built: { ids: [isId], fields: builtFields },
      bay: { ids: [isBay], fields: bayFields },
      stand: { ids: [], fields: r.standFields },
      foot: { ids: [isFoot], fields: r.footFields },
      gap: { ids: [isId], fields: r.gapFields },
    },
  },
  room: {
    ids: [],
    fields: r.roomFields,
    under: {
      across: { ids: [isId], fields: r.acrossFields },
      upright: { ids: [isId], fields: r.uprightFields },
      corner: { ids: [isSide], fields: r.cornerFields },
      zone: { ids: [isId], fields: r.zoneFields },
      way: { ids: [isId], fields: r.wayFields },
    },
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
