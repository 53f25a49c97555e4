import type { Length } from '../../length/length';

/**
 * What of a shop takes a piece: a table saw by its fence or its sled, a sliding saw, a router, a circular saw, a drill
 * press, a plate joiner; a router table and a plunge saw on its guide, which a shop has only as machines of its own.
 */
export type Tool =
  | 'fence'
  | 'sled'
  | 'sliding'
  | 'router'
  | 'circular'
  | 'press'
  | 'plate'
  | 'table'
  | 'plunge';

/** A machine the shop added for itself, by the name it is kept under: no tool is spelled so. */
export type OwnId = `own${string}`;

/**
 * A figure of a machine of the shop's own: those of the tool it works like, the most its arbor carries, and how far the
 * teeth of a plunge saw stand off the edge of its guide.
 */
export type OwnField = ShopField | 'arbor' | 'guideEdge';

/** A machine the shop added for itself: it works like one of the tools, by figures of its own. Inches. */
export type OwnMachine = {
  readonly id: OwnId;
  /** As the user calls it. */
  readonly name: string;
  readonly like: Tool;
  readonly figures: Readonly<Partial<Record<OwnField, Length>>>;
};

/** Figures of the shop's own tools, kept from job to job. What is not yet measured is `undefined`. Inches. */
export type Shop = {
  /** Single blade the fence scale is zeroed to. */
  readonly single?: Length | undefined;
  /** Stand-off block between fence and work. */
  readonly block?: Length | undefined;
  /** Largest setting of the table-saw fence. */
  readonly capacity?: Length | undefined;
  /** Farthest a stop can stand from the teeth on the crosscut fence. */
  readonly stopReach?: Length | undefined;
  /** Highest the table saw's blade or stack stands over the table. */
  readonly tableHeight?: Length | undefined;
  /** From the table saw's blade to where its table ends: behind the blade, and beside it, away from the fence. */
  readonly tableBehind?: Length | undefined;
  readonly tableBeside?: Length | undefined;
  /** Widest board the sled takes between its fence and the end of its stroke. */
  readonly sledCross?: Length | undefined;
  /**
   * Sliding or radial saw: widest crosscut, farthest its stop stands, thickest it parts; widest stack of its arbor,
   * nothing where it takes none.
   */
  readonly slidingCross?: Length | undefined;
  readonly slidingStop?: Length | undefined;
  readonly slidingHeight?: Length | undefined;
  readonly slidingStack?: Length | undefined;
  /** Deepest the router's bit reaches below its base, most at one pass, longest guide. */
  readonly routerReach?: Length | undefined;
  readonly routerPass?: Length | undefined;
  readonly routerGuide?: Length | undefined;
  /** Circular saw: deepest cut, longest guide. */
  readonly circularDepth?: Length | undefined;
  readonly circularGuide?: Length | undefined;
  /** Drill press: from the middle of its bit to the column, how deep it goes down at one stroke, largest bit. */
  readonly pressThroat?: Length | undefined;
  readonly pressStroke?: Length | undefined;
  readonly pressBit?: Length | undefined;
  /**
   * Plate joiner: deepest it plunges, from its fence to the middle of the cutter at most, and from its base to that.
   */
  readonly plateDeep?: Length | undefined;
  readonly plateFence?: Length | undefined;
  readonly plateBase?: Length | undefined;
  /** Router base edge to cutter centre. */
  readonly routerBase?: Length | undefined;
  readonly bit?: Length | undefined;
  /** Circular saw shoe edge to the nearer tooth face: guide lying on the keep piece. */
  readonly shoeKeep?: Length | undefined;
  /** Circular saw shoe edge to the nearer tooth face: guide lying on the waste. */
  readonly shoeWaste?: Length | undefined;
  readonly kerf?: Length | undefined;
  /** Overlap of passes. Common practice 1/16, no source. */
  readonly overlap?: Length | undefined;
  /** Error of one step when stepping by a pin or blocks. */
  readonly stepError?: Length | undefined;
  /** Drawer slides: how thick, high and long one is. */
  readonly slideThickness?: Length | undefined;
  readonly slideHeight?: Length | undefined;
  readonly slideLength?: Length | undefined;
  /** One short and one long board as two tapes read them. */
  readonly tapeShort?: Length | undefined;
  readonly otherShort?: Length | undefined;
  readonly tapeLong?: Length | undefined;
  readonly otherLong?: Length | undefined;
  /** The teeth stand at the edge of the guide, or the shoe's figures off it, be they 0: a plunge saw. No figure. */
  readonly atGuide?: true | undefined;
  /** In what order its tools are tried, as said; those not named come after, as usual. No figure. */
  readonly order?: readonly (Tool | OwnId)[] | undefined;
  /** Machines it added for itself. No figure. */
  readonly own?: readonly OwnMachine[] | undefined;
  /** Lengths of the screws on its shelf. No figure. */
  readonly screws?: readonly Length[] | undefined;
};

/** The name of a figure: it is kept under it. */
export type ShopField = Exclude<keyof Shop, 'order' | 'own' | 'atGuide' | 'screws'>;
