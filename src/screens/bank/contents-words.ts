import type { Length, Ratio } from '../../length/length';
import type { LoadSays } from '../../trade/boxes/contents';
import { exactly as w } from '../shared/exact-words';
import { weight } from '../shared/pounds';

export const say = (contentsFirst: boolean): string =>
  `Enter the tallest, longest and heaviest thing for each drawer. ${
    contentsFirst
      ? 'No front comes out lower than its things need.'
      : 'Turn on Contents first, and no front comes out lower than its things need.'
  }`;

export const noDrawer = 'In no drawer';
export const lost = 'These went into a drawer that is not there any more: say where they go.';

/** What a drawer takes, behind a front so high. */
export const room = (front: Length, most: { readonly tall: Length; readonly long: Length }): string =>
  `Front ${w(front)}: takes things up to ${w(most.tall)} tall and ${w(most.long)} long.`;

export const asks = (front: Length): string => `The tallest needs a front of at least ${w(front)}.`;

export const unfit = (
  name: string | undefined,
  { code, by }: { readonly code: 'too-tall' | 'too-long'; readonly by: Length },
): string => `${name || 'A thing'} is ${w(by)} ${code === 'too-tall' ? 'too tall' : 'too long'}.`;

const verdicts = { over: ': too much', near: ': near it', within: '' } as const;

/** What a drawer weighs with what is in it, beside what its slides carry. */
export const load = (at: {
  readonly total: Ratio;
  readonly things: Ratio;
  readonly own: Ratio;
  readonly unweighed: number;
  readonly says: LoadSays['code'] | 'in-wood';
  /** A whole per cent of what the pair carries; none where that is not said. */
  readonly share: number | undefined;
}): string => {
  const not = at.unweighed > 0 ? `, ${at.unweighed} not weighed` : '';
  const weighs = `About ${weight(at.total)}: things ${weight(at.things)}, box and front ${weight(at.own)}${not}.`;
  if (at.says === 'in-wood')
    return `${weighs} It runs in wood, and nobody rates that: heavy things go low, and try it loaded.`;
  if (at.says === 'rating-missing') return `${weighs} Enter what a pair of slides carries.`;
  return `${weighs} ${at.share}\u00a0% of what the pair carries${verdicts[at.says]}.`;
};
