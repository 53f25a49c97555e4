import { assertNever } from '../../length/result';
import type { Board } from '../../trade/grooves/board';
import type { Layout } from '../../trade/grooves/lay-out';
import type { BoardField, GrooveField, Problem } from '../../trade/grooves/layout';
import type { Setting, SettingProblem, SettingWarning } from '../../trade/grooves/settings';
import type { OwnMachine } from '../../trade/machines/shop';
import { capital } from './capital';
import { exactly as w } from './exact-words';
import { callGroove } from './groove-name';
import { ownName } from './machines/machine-names';
import { shopFields } from './shop-field-words';
import { tooManyText } from './too-much-words';

const fields: Record<BoardField | GrooveField, string> = {
  length: 'the length of the board',
  thickness: 'the thickness',
  datum: 'the datum',
  mate: 'the facing part’s datum',
  copies: 'how many boards',
  cutter: 'the width of the stack or bit',
  across: 'the width of the board',
  width: 'how wide the grooves are',
  depth: 'how deep they are',
  count: 'how many grooves',
  pitch: 'how far apart, centre to centre',
  first: 'where the first one goes',
  endRoom: 'the room at the far end',
  span: 'the length to fill',
  part: 'the thickness of the parts',
  at: 'where they go',
  near: 'where it goes',
  stopped: 'where they stop',
};

/** Which run or wide groove a problem is in, where there is more than one. */
function where(board: Board, id: string | undefined): string {
  const run = board.runs.findIndex((r) => r.id === id);
  if (run >= 0 && board.runs.length > 1) return ` in run ${run + 1}`;
  const wide = board.wides.findIndex((x) => x.id === id);
  return wide >= 0 ? ` of wide groove ${wide + 1}` : '';
}

const many = (n: number): string => (n === 0 ? 'None fits' : n === 1 ? 'One fits' : `${n} fit`);

/** What cannot be cut, by how much, and what would fit. */
export function problemText(problem: Problem, board: Board, layout: Layout): string {
  const call = (id: string) => callGroove(layout, id);
  switch (problem.code) {
    case 'missing':
      return `Say ${fields[problem.field]}${where(board, problem.in)}.`;
    case 'not-positive':
      return `${capital(fields[problem.field])}${where(board, problem.in)} must be more than 0.`;
    case 'negative':
      return `${capital(fields[problem.field])}${where(board, problem.in)} is ${w(problem.by)} below 0. Make it 0 or more.`;
    case 'too-many':
      return tooManyText(problem);
    case 'count-not-whole':
      return `Grooves are counted in whole numbers, one to a thousand${where(board, problem.in)}.`;
    case 'pitch-too-small':
      return `${w(problem.pitch)} apart leaves no wood between grooves ${w(problem.width)} wide. Go over ${w(problem.width)}.`;
    case 'off-the-end':
      return `No. ${problem.no} starts ${w(problem.by)} before the end. Start at least that much farther in.`;
    case 'past-the-end': {
      const start = problem.startAt.s < 0n ? '' : `, or start at ${w(problem.startAt)}`;
      return `No. ${problem.no} runs ${w(problem.by)} past the end. ${many(problem.fits)}${start}.`;
    }
    case 'none-fit':
      return `Not one groove fits: ${w(problem.short)} short. Start nearer the end, or leave less room.`;
    case 'no-openings':
      return `The parts alone run ${w(problem.short)} over the length. ${many(problem.fits)} with openings between.`;
    case 'part-too-thick':
      return `Parts ${w(problem.part)} thick do not go into grooves ${w(problem.width)} wide.`;
    case 'overlap':
      return `${call(problem.a)} and ${call(problem.b)} run ${w(problem.by)} into each other. Move one by more than that.`;
    case 'too-deep':
      return `${w(problem.depth)} deep goes through a board ${w(problem.thickness)} thick. Leave a third of it.`;
    case 'no-web':
      return `${call(problem.a)} and ${call(problem.b)} meet through the board${problem.by.n === 0n ? '' : `, ${w(problem.by)} over`}. Stagger them, cut shallower, or take thicker stuff.`;
    default:
      return assertNever(problem);
  }
}

export const passText = ({ wall, pass, passes, strip }: Setting): string => {
  if (passes === 1) return '';
  const which = { near: 'near wall', far: 'far wall', between: 'between the walls', only: '' }[wall];
  const packed = strip === undefined ? '' : strip.n === 0n ? ', strip out' : `, strip ${w(strip)} in`;
  return `pass ${pass} of ${passes}, ${which}${packed}`;
};

export function settingProblemText(problem: SettingProblem, own?: OwnMachine): string {
  switch (problem.code) {
    case 'shop-figure-missing':
      return `Measure once for ${own ? ownName(own) : 'the shop'}: ${shopFields[problem.field].toLowerCase()}.`;
    case 'shop-figure-wrong':
      return `Shop figures say ${w(problem.figure)} for ${shopFields[problem.field].toLowerCase()}. Measure it again.`;
    case 'cutter-too-wide':
      return `No. ${problem.groove.no}: a cutter ${w(problem.cutter)} wide cannot make a groove ${w(problem.width)} wide. Take one no wider.`;
    case 'overlap-negative':
      return `Passes ${w(problem.by)} short of each other leave wood standing. Overlap by 0 or more.`;
    case 'overlap-too-big':
      return `Passes overlap by ${w(problem.overlap)}, as wide as the cutter (${w(problem.cutter)}). Overlap less.`;
    case 'beyond-fence':
      return `No. ${problem.groove.no} wants ${w(problem.figure)}; the fence ends at ${w(problem.capacity)}.${problem.fromOther ? ` From the other end it is ${w(problem.fromOther)}.` : ' Take the router or the saw with a guide.'}`;
    case 'behind-fence':
      return `No. ${problem.groove.no}: the figure comes out ${w(problem.figure)}. The stop cannot stand there.`;
    case 'guide-off-board': {
      const at = problem.otherSide ? `, at ${w(problem.otherSide)}` : '';
      const remedy = problem.neither
        ? 'Clamp a piece beside the board for the guide to lie on.'
        : `Lay it on the other side${at}.`;
      return `No. ${problem.groove.no}: the guide would lie off the board, at ${w(problem.figure)}. ${remedy}`;
    }
    default:
      return assertNever(problem);
  }
}

export function settingWarningText(warning: SettingWarning): string {
  switch (warning.code) {
    case 'lengths-must-match':
      return 'The other end is on the stop: every error in length goes straight into the groove. Only for boards that all came off one stop.';
    case 'narrow-at-fence':
      return `The board is ${w(warning.across)} along the fence and reaches ${w(warning.reach)} from it: unsteady. Take a crosscut sled or the mitre gauge.`;
    default:
      return assertNever(warning);
  }
}
