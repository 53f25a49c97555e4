import type { Machine } from '../trade/grooves/board';

/** Common practice, no source. The tool's own manual, local codes and licensed practice come first. */
const cautions: Record<Machine, string> = {
  stop: 'Work level and tight to the fence, stop clear of chips. Saw stopped before you reach in.',
  fence:
    'Guard and knife go straight back on after. Wide insert, push blocks, nothing freehand; never fence and mitre gauge together on a cut that goes through.',
  router:
    'Clamp guide and work. Feed so the bit draws into the guide. No light pass on the climbing side. Bit stopped before lifting.',
  saw: 'Both halves held up so the kerf cannot close. Depth set to the groove, never deeper. Cord and hands behind.',
  spacers: 'Spacers lie flat on a clean stop. Work tight to the fence, hands outside the line.',
  index: 'These pencil marks belong to one stack. Long work held level, hands outside the line.',
};

export const cautionFor = (machine: Machine): string => cautions[machine];

export const manualFirst =
  'The tool’s manual comes first. Eyes, ears, dust. Unplug before changing a blade, stack or bit. Stop the machine before you touch the phone or the stop.';
