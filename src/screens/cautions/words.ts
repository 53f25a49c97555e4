import type { Part } from '../shared/caution-parts';

export const title = 'Before you cut';
export const back = 'Back';
export const manualFirst =
  'The tool’s own manual, local codes and licensed practice come first. What stands here are general words. No figure of this app ever asks you to pass a guard.';

type PartWords = { readonly title: string; readonly lines: readonly string[] };

/** What is said in each part. General words: common practice, no source. */
export const partWords: Readonly<Record<Part, PartWords>> = {
  'all-cutting': {
    title: 'All cutting',
    lines: [
      'Read and follow the manual of the tool.',
      'Cover eyes and ears; draw off the dust, mask for the rest.',
      'No gloves, loose sleeves or long hair at a machine that runs.',
      'Unplug before you change a blade, stack, shim or bit.',
      'Stop the machine before you touch the phone or the stop.',
    ],
  },
  'table-saw': {
    title: 'Table saw, and with a stack',
    lines: [
      'Guard and riving knife usually come off for a stack. They go straight back on after that cut.',
      'An insert that fits, push blocks, nothing freehand.',
      'A part too narrow along the fence to run steady is cut another way.',
      'Never fence and mitre gauge together on a cut that goes through: use a stand-off block.',
      'Blades come off with the saw unplugged, held by the plate. Turn the arbor by hand before the plug goes in.',
    ],
  },
  'crosscut-saw': {
    title: 'Radial or sliding saw, sled and stop',
    lines: [
      'A radial saw can pull itself along toward you.',
      'Hands outside the line, work tight to the fence, long work held level.',
      'Stop clear of chips.',
      'Saw returned and stopped before you reach in.',
    ],
  },
  'circular-saw': {
    title: 'Circular saw and guide',
    lines: [
      'Hold up both halves, so that the kerf cannot close.',
      'Set the depth just past the sheet, or to the groove.',
      'Cord and hands behind; never over the knee.',
      'A plunge saw lies flat on its guide before its blade goes down.',
    ],
  },
  router: {
    title: 'Router',
    lines: [
      'Feed against the turn of the bit; no light pass the climbing way.',
      'Clamp the guide and the work.',
      'Bit stopped before you lift it.',
    ],
  },
  dovetails: {
    title: 'Dovetail template',
    lines: [
      'Do not raise the router inside the fingers of the template: slide it out.',
      'Clamps tried, scrap behind.',
      'Push a chisel away from the hand that holds.',
    ],
  },
  'small-pieces': {
    title: 'Small pieces, short sticks, narrow rips',
    lines: [
      'Cut them from long stock, held with a block, not fingers.',
      'Leave an offcut where it lies until the blade stands.',
    ],
  },
  fasteners: {
    title: 'Brads, screws, holes',
    lines: [
      'Hand a hand’s length off: a brad follows the grain and comes out at the side.',
      'Pilot first. Hand clear of where a tip or bit comes through.',
      'Look for pipes, wires and heating tubes before any fastener goes into a floor or wall.',
      'Plug strips, sockets, wiring: by a licensed electrician or to one’s satisfaction, and to local code.',
    ],
  },
  bench: {
    title: 'Dry-fit, glue-up, work by hand',
    lines: [
      'A dry case stands by its clamps alone.',
      'Fingers out of joints as they close; clamps let off slowly.',
      'Work clamped, both hands behind the edge of knife or chisel.',
    ],
  },
  'old-finishes': {
    title: 'Old finishes, used wood',
    lines: [
      'They may hold lead. Test before you cut, sand or strip; work wet and masked; waste by local rule.',
      'Nails and screws out before a blade goes in.',
    ],
  },
  lifting: {
    title: 'Lifting, rolling, tilting',
    lines: [
      'Weigh first: two people over 50 lb. Path cleared, nobody below.',
      'Never climb under a load held by hand: a ledger or a jack holds it.',
    ],
  },
  'tall-units': {
    title: 'Tall units and drawers',
    lines: [
      'Anchor to a stud or a solid fixing before anything is loaded, never through the thin back alone.',
      'Drawers out while it is moved, levelled and anchored. Until then one loaded drawer at a time.',
      'To a child open drawers are a ladder. A unit that tips can kill.',
    ],
  },
  finish: {
    title: 'Finish, and before specimens go in',
    lines: [
      'Fresh air; no flames or sparks.',
      'Oily rags can heat and burn by themselves: flat or under water, by local rule.',
      'Let finish and glue cure before specimens are closed in.',
      'Oak, fresh glue and oil finishes give off acid that attacks shell and lime minerals. Ask a conservator.',
    ],
  },
  loads: {
    title: 'Loads, sag, tipping',
    lines: [
      'These figures are estimates, with no engineer’s judgment in them.',
      'In a museum or public place ask who is responsible.',
    ],
  },
};
