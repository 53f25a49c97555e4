import type { Plan } from '../../plan/plan';
import type { Operation } from '../../trade/setups/operation';
import { Icon } from '../../ui/icon';
import { thinnerSays } from './thinner-words';

type LinesProps = {
  readonly plan: Plan;
  readonly operations: readonly Operation[];
  readonly inset?: boolean;
};

/** What of some cuts stands on less than the thickest reading, where their figure stands. */
export const ThinnerLines = ({ plan, operations, inset = false }: LinesProps) => (
  <>
    {thinnerSays(plan, operations).map((says) => (
      <span key={says} class={inset ? 'wrongline pad-x' : 's wrongline'}>
        <Icon name="warn" />
        {says}
      </span>
    ))}
  </>
);
