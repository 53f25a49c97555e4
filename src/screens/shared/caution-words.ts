import { assertNever } from '../../length/result';
import type { Caution } from '../../trade/cautions/caution';
import type { CautionWords } from './caution-line';
import { grooveCaution } from './groove-caution';

/** The words of each caution: general, common practice, no source. The tool's own manual comes first. */
export function cautionWords(caution: Caution): CautionWords {
  switch (caution) {
    case 'stop':
    case 'fence':
    case 'router':
    case 'saw':
    case 'spacers':
    case 'index':
      return grooveCaution(caution);
    case 'rip':
      return [
        'Guard and knife on, push block at hand.',
        'A narrow piece is pushed with it, or falls on the free side off a stop clear of the blade.',
      ];
    case 'crosscut':
      return [
        'Hands outside the line the blade runs.',
        'Both ends held level, stop clear of chips. A radial saw pulls itself along: stopped before you reach in.',
      ];
    case 'mitre':
      return [
        'Work held fast, hands outside the line.',
        'At an angle it creeps along the fence: clamp or stop, never freehand.',
      ];
    case 'rabbet':
      return [
        'Push block or feather board, no fingers.',
        'Wide insert, sacrificial fence fast, nothing freehand. Guard and knife go straight back on after.',
      ];
    case 'notch':
      return [
        'Parts clamped as one, hands held high.',
        'Against a tall fence or on a carriage, with a wide insert. Guard and knife go straight back on after.',
      ];
    case 'lap':
      return [
        'Held to the mitre gauge or the sled.',
        'No fence touches the end as it is cut through. Wide insert; guard and knife go straight back on after.',
      ];
    case 'dovetail':
      return [
        'Clamps tried, scrap behind the work.',
        'By template: the router slides out, it is never raised among the fingers. By hand: chisel away from the hand that holds.',
      ];
    case 'stick':
      return [
        'Hold a short stick with a block.',
        'Cut it from a long one. The offcut lies until the blade stands.',
      ];
    case 'jig':
      return [
        'Front and jig clamped, scrap behind.',
        'Hand clear of where the bit comes through. No gloves or loose sleeves at the drill.',
      ];
    case 'hand':
      return [
        'Work clamped, hands behind the edge.',
        'Unplug before you change a bit or blade. Old paint may hold lead: test before you sand or scrape it.',
      ];
    case 'dry-fit':
      return [
        'Clamped before you let go of it.',
        'Nothing stands by a dry joint alone. Fingers out of joints as they close; two people over 50 lb.',
      ];
    case 'finish-inside':
      return [
        'Fresh air; oily rags flat or in water.',
        'Such rags heat and burn by themselves: by local rule. Let it cure before specimens go in: oak and fresh glue give off acid that attacks shell and lime minerals.',
      ];
    case 'glue-up':
      return [
        'Fingers out of joints as they close.',
        'Clamps and cauls at hand, snug, let off slowly. Two people to turn a case over 50 lb.',
      ];
    case 'frame-on':
      return [
        'Hand well off where a brad goes in.',
        'Brads follow the grain and come out at the side: a hand’s length off. Pilot before a screw.',
      ];
    case 'marks':
      return [
        'Knife away from the hand that holds.',
        'The stick lies flat and still. Lay the knife down before you lift, climb or reach.',
      ];
    case 'box-up':
      return [
        'Clamps snug, hands out from under them.',
        'Fingers out of joints as they close; a clamp is let off slowly.',
      ];
    case 'hang':
      return [
        'One drawer out until the case is fast.',
        'Not anchored, two open drawers bring it down. Fingers out from between box and case; children away.',
      ];
    case 'level':
      return [
        'Anchor before anything is loaded.',
        'Drawers out; into a stud or solid fixing. First find pipes, wires, heating tubes; wiring: a licensed electrician. A tall case tips: children away, nobody below.',
      ];
    case 'front-on':
      return [
        'Pilot first, hand clear of the tip.',
        'Case levelled and anchored before; one drawer out at a time. Try that the screw is too short to come through.',
      ];
    case 'sheet-cut':
      return [
        'Both halves held up, hands behind.',
        'The kerf may not close. Depth just past the sheet, cord behind, never over the knee.',
      ];
    case 'stick-cut':
      return [
        'Tight to the fence, stop clear of chips.',
        'A short piece is held with a block or clamp. The offcut lies until the blade stands.',
      ];
    case 'carry':
      return [
        'Over 50 lb: two people, path cleared.',
        'A sheet over what you can carry is cut along the guide where it lies. Hold up both halves of every cut.',
      ];
    case 'stack':
      return [
        'Unplugged; blades handled with care.',
        'Hold them by the plate, lay them on wood. Nut tight, insert fits, turned by hand before the plug goes in. No gloves once it runs.',
      ];
    case 'shims':
      return [
        'Lift with a lever, no hand under it.',
        'Drawers out, the case held so that it cannot tip, nobody below while a shim goes in.',
      ];
    case 'as-built':
      return [
        'Clamped before you lean into it.',
        'A dry case stands by its clamps alone. Two people to turn it over 50 lb.',
      ];
    case 'load':
      return [
        'Anchored before anything goes in.',
        'One loaded drawer out at a time until then. Finish and glue cured before shells and minerals go in. Pounds here are estimates.',
      ];
    case 'old-finish':
      return [
        'Old paint may hold lead: test it first.',
        'Cut, sanded or stripped wet and masked, waste by local rule. Nails out of used wood first.',
      ];
    default:
      return assertNever(caution);
  }
}
