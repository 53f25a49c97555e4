import type { Caution } from '../../trade/cautions/caution';
import type { OwnCaution } from '../../trade/machines/machines';
import type { CautionWords } from './caution-line';
import { isOfMachine, machineWords } from './machines/machine-words';
import { poundsIn } from './pounds';

/** Cautions at a step or a moment. Common practice, no source. */
const words: Readonly<Record<Exclude<Caution, OwnCaution>, CautionWords>> = {
  'dry-fit': [
    'Clamped before you let go of it.',
    'Nothing stands by a dry joint alone. Fingers out of joints as they close; two people over 50 lb.',
  ],
  'finish-inside': [
    'Fresh air; oily rags flat or in water.',
    'Such rags heat and burn by themselves: by local rule. Let it cure before specimens go in: oak and fresh glue give off acid that attacks shell and lime minerals.',
  ],
  'glue-up': [
    'Fingers out of joints as they close.',
    'Clamps and cauls at hand, snug, let off slowly. Two people to turn a case over 50 lb.',
  ],
  'frame-on': [
    'Hand well off where a brad goes in.',
    'Brads follow the grain and come out at the side: a hand’s length off. Pilot before a screw.',
  ],
  marks: [
    'Knife away from the hand that holds.',
    'The stick lies flat and still. Lay the knife down before you lift, climb or reach.',
  ],
  'box-up': [
    'Clamps snug, hands out from under them.',
    'Fingers out of joints as they close; a clamp is let off slowly.',
  ],
  hang: [
    'One drawer out until the case is fast.',
    'Not anchored, two open drawers bring it down. Fingers out from between box and case; children away.',
  ],
  'stop-block': [
    'Hold the drawer till its blocks catch.',
    'Without them it drops on feet as it comes out. Drawer held by a second person, empty, case fast; pilot first, no tip through.',
  ],
  'carry-in': [
    'Over 50 lb by two, drawers out first.',
    'Weigh it up before you lift: Lift plan. Way cleared, nobody below on a stair, hands off the floor as it comes down. A tall case is held until it is fast.',
  ],
  level: [
    'Anchor before anything is loaded.',
    'Drawers out; into a stud or solid fixing. First find pipes, wires, heating tubes; wiring: a licensed electrician. A tall case tips: children away, nobody below.',
  ],
  scribe: [
    'The case stands loose: one holds it.',
    'It tips until it is anchored: drawers out, children away. Both hands behind the edge of plane or knife; a saw off before you reach in.',
  ],
  filler: [
    'Clamp the strip while it is planed.',
    'The case is not anchored yet: nobody leans on it. A strip not ripped yet comes off a wide piece, with a block. Guard on; the offcut lies until the blade stands.',
  ],
  cleat: [
    'Find pipes, wires, tubes before a hole.',
    'Wiring: a licensed electrician. Two hold a long cleat while it is screwed; eyes covered under the drill. Nothing hangs on it until every screw is in.',
  ],
  anchor: [
    'Pipes and wires found before any hole.',
    'Heating tubes too; wiring: a licensed electrician. Into a stud or solid fixing. One loaded drawer out at a time until it is fast. Children away: a case tips.',
  ],
  'check-again': [
    'Nothing is loaded until it is checked.',
    'Tightening pulls a case out of level. A shim goes in by a lever, no hand under it. No screw longer than the one that came out.',
  ],
  'front-on': [
    'Pilot first, hand clear of the tip.',
    'Case levelled and anchored before; one drawer out at a time. Try that the screw is too short to come through.',
  ],
  'sheet-cut': [
    'Both halves held up, hands behind.',
    'The kerf may not close. Depth just past the sheet, cord behind, never over the knee.',
  ],
  plunge: [
    'Guide held fast, both halves held up.',
    'The kerf may not close. Depth just past the work; saw flat on its guide before the blade goes down, no hand behind it. Blade up and stopped before you lift it.',
  ],
  'stick-cut': [
    'Tight to the fence, stop clear of chips.',
    'A short piece is held with a block or clamp. The offcut lies until the blade stands.',
  ],
  carry: [
    'Over 50 lb: two people, path cleared.',
    'A sheet over what you can carry is cut along the guide where it lies. Hold up both halves of every cut.',
  ],
  stack: [
    'Unplugged; blades handled with care.',
    'Hold them by the plate, lay them on wood. Nut tight, insert fits, turned by hand before the plug goes in. No gloves once it runs.',
  ],
  shims: [
    'Lift with a lever, no hand under it.',
    'Drawers out, the case held so that it cannot tip, nobody below while a shim goes in.',
  ],
  'as-built': [
    'Clamped before you lean into it.',
    'A dry case stands by its clamps alone. Two people to turn it over 50 lb.',
  ],
  load: [
    'Anchored before anything goes in.',
    'One loaded drawer out at a time until then. Finish and glue cured before shells and minerals go in. Weights here are estimates.',
  ],
  cure: [
    'Nothing goes in until it has cured.',
    'Fresh air. Oily rags heat by themselves: flat or in water, by local rule. Oak and fresh finish give off acid that attacks shell and lime minerals.',
  ],
  label: [
    'One loaded drawer out at a time.',
    'Shut it before the next: what hangs out in front tips a case. To a child open drawers are a ladder.',
  ],
  'look-back': [
    'Look at every fixing again after a week.',
    'A case that has come loose is emptied first, from the top, one drawer at a time, then fixed anew.',
  ],
  'old-finish': [
    'Old paint may hold lead: test it first.',
    'Cut, sanded or stripped wet and masked, waste by local rule. Nails out of used wood first.',
  ],
};

/** The words of each caution: general, common practice, no source. The tool's own manual comes first. */
export function cautionWords(caution: Caution): CautionWords {
  if (isOfMachine(caution)) return machineWords[caution].caution;
  const [first, second] = words[caution];
  return [poundsIn(first), poundsIn(second)];
}
