import { zero } from '../../length/length';
import type { OwnField, OwnId, OwnMachine, Shop, Tool } from './shop';

/** What takes a cut: a tool of every shop, or a machine this one added for itself. */
export type Taker = Tool | OwnMachine;

/** The tool it is, or works like. */
export const toolOf = (taker: Taker): Tool => (typeof taker === 'string' ? taker : taker.like);

/** The name it is kept under, in the order of the tools and where it is chosen. */
export const takerId = (taker: Taker): Tool | OwnId => (typeof taker === 'string' ? taker : taker.id);

/** The figures a machine of the shop's own has, by what it works like. */
export const ownFields: Readonly<Record<Tool, readonly OwnField[]>> = {
  fence: ['single', 'block', 'capacity', 'tableHeight', 'tableBehind', 'tableBeside', 'arbor'],
  sled: ['sledCross', 'stopReach', 'tableHeight', 'tableBeside', 'arbor'],
  sliding: ['slidingCross', 'slidingStop', 'slidingHeight', 'slidingStack'],
  router: ['routerBase', 'bit', 'routerReach', 'routerPass', 'routerGuide'],
  table: ['capacity', 'bit', 'routerReach', 'routerPass'],
  circular: ['kerf', 'shoeKeep', 'shoeWaste', 'circularDepth', 'circularGuide'],
  plunge: ['kerf', 'guideEdge', 'circularDepth', 'circularGuide'],
  press: ['pressThroat', 'pressStroke', 'pressBit'],
  plate: ['plateDeep', 'plateFence', 'plateBase'],
};

/** A machine of the shop's own by its id; nothing where this shop has none such. */
export const ownOf = ({ own = [] }: Pick<Shop, 'own'>, id: string | undefined): OwnMachine | undefined =>
  id === undefined ? undefined : own.find((one) => one.id === id);

/**
 * The shop's figures at a machine of its own: of what that works like its own alone, blank where it has none, so that
 * it is asked.
 *
 * @example shopAt({ ...shop, capacity: inches(30n) }, { ...oldSaw, figures: {} }).capacity // undefined
 */
export function shopAt<S extends Shop>(shop: S, own: OwnMachine | undefined): S {
  if (!own) return shop;
  const figures = Object.fromEntries(ownFields[own.like].map((field) => [field, own.figures[field]]));
  if (own.like !== 'plunge') return { ...shop, ...figures };
  // its guide lies with its edge at the teeth, or so far off: on either side of the line
  const off = own.figures.guideEdge ?? zero;
  return { ...shop, ...figures, shoeKeep: off, shoeWaste: off, atGuide: true };
}

/** Whether a machine of the shop's own stands in for one of every shop: it works like that. */
export const worksAs = ({ like }: OwnMachine, tool: Tool | undefined): boolean =>
  like === tool || (like === 'plunge' && tool === 'circular');
