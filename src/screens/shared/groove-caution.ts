import { assertNever } from '../../length/result';
import type { Machine } from '../../trade/grooves/board';
import type { CautionWords } from './caution-line';

/** Cautions of the machines that cut grooves: with the first screens, where the saw is. Common practice, no source. */
export function grooveCaution(machine: Machine): CautionWords {
  switch (machine) {
    case 'stop':
      return [
        'Hands outside the line the blade runs.',
        'Work level and tight to the fence, stop clear of chips. A radial saw pulls itself along.',
      ];
    case 'fence':
      return [
        'Push blocks; guard back on right after.',
        'Wide insert, nothing freehand. Fence and mitre gauge never together on a cut that goes through.',
      ];
    case 'router':
      return [
        'Feed so the bit draws into the guide.',
        'Guide and work clamped. No light pass on the climbing side. Bit stopped before you lift it.',
      ];
    case 'saw':
      return [
        'Both halves held up, hands behind.',
        'The kerf may not close. Depth set to the cut, cord behind, never over the knee.',
      ];
    case 'spacers':
      return [
        'Spacers flat, hands outside the line.',
        'Stop clear of chips, work tight to the fence. A radial saw pulls itself along; stopped before you reach in.',
      ];
    case 'index':
      return [
        'Work held level, hands outside the line.',
        'These pencil marks belong to one stack. A radial saw pulls itself along; stopped before you reach in.',
      ];
    default:
      return assertNever(machine);
  }
}
