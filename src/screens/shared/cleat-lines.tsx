import { cleatAt, type WithCases } from '../../plan/cleat-plan';
import { crossedBy } from '../../plan/stud-plan';
import { Icon } from '../../ui/icon';
import * as words from './cleat-words';

type LinesProps = { readonly on: WithCases; readonly place: string };

/** What is wrong with where a cleat stands, and what is in its way there. */
export function cleatWrongs(on: WithCases, place: string): readonly string[] {
  const cleat = cleatAt(on, place);
  const crossed = crossedBy(on, place);
  return [
    ...(cleat.wrong ? [words.wrongText(cleat.wrong, cleat.on)] : []),
    ...(crossed ? [words.crossedText(crossed)] : []),
  ];
}

/** How high the cleat of a case stands and how that is measured; what is wrong with it. */
export const CleatLines = ({ on, place }: LinesProps) => (
  <>
    <p>{words.heightText(cleatAt(on, place))}</p>
    {cleatWrongs(on, place).map((says) => (
      <p key={says} class="wrongline">
        <Icon name="warn" />
        {says}
      </p>
    ))}
  </>
);
