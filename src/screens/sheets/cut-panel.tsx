import type { Ratio } from '../../length/length';
import { toWhole } from '../../length/round';
import type { Tape } from '../../length/tape';
import type { Shop } from '../../trade/machines/shop';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { Icon } from '../../ui/icon';
import { Inline, Mixed, Remainder } from '../../ui/mixed';
import { cutTitle, fromWords, sideWords, sizeWords } from './words';

type CutPanelProps = {
  readonly step: CutStep;
  readonly done: boolean;
  readonly tape: Tape;
  readonly shop: Shop;
  readonly stick: boolean;
  readonly name: (piece: string) => string;
};

/** The cut to be made: its figure, from which edge, which side is kept, and where the guide goes. */
export function CutPanel({ step, done, tape, name, shop, stick }: CutPanelProps) {
  const keepNear = step.keep === 'near';
  const kept = keepNear ? step.nearIs : step.farIs;
  const other = keepNear ? step.farIs : step.nearIs;
  const keptSize = keepNear ? step.near : step.far;
  const otherSize = keepNear ? step.far : step.near;
  return (
    <section class="cutnow" aria-label={`Cut ${step.no}`}>
      <span class={done ? 'badge done' : 'badge'} aria-hidden="true">
        {done ? '✓' : step.no}
      </span>
      <div class="t">
        {cutTitle(step)}
        <span class="s muted block">{fromWords(step)}</span>
      </div>
      <div class="fig">
        <Mixed value={step.figure.value} rest={step.figure.rest} size="arm" tape={tape} />
        <Remainder rest={step.figure.rest} tape={tape} by={false} />
      </div>
      {step.tool === 'guide' && !stick && <GuideLine step={step} tape={tape} shop={shop} />}
      <p class="keeps">
        <b>{capital(sideWords(kept, name))}</b> <span class="nb">{sizeWords(keptSize, tape)}</span> kept
        {step.tool === 'guide' && `, kerf ${keepNear ? 'beyond' : 'before'} the line`}
        {other.is !== 'waste' && (
          <>
            ; other side {sideWords(other, name)} <span class="nb">{sizeWords(otherSize, tape)}</span>
          </>
        )}
      </p>
      {step.heavy && step.weight && (
        <p class="fact warn">
          <Icon name="warn" />
          About {pounds(step.weight)} lb: by two, or cut where it lies. Then {pounds(step.nearWeight)} and{' '}
          {pounds(step.farWeight)} lb.
        </p>
      )}
    </section>
  );
}

const pounds = (x: Ratio | undefined): string => (x ? `${toWhole(x, 'halfExpand')}` : '0');

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Second mark of a guided cut: the guide's edge, lying on what is kept or on the other side. */
function GuideLine({
  step: { onKeep, onWaste },
  tape,
  shop,
}: {
  readonly step: CutStep;
  readonly tape: Tape;
  readonly shop: Shop;
}) {
  if (!onKeep && !onWaste)
    return (
      <p class="s keeps">
        {shop.shoeKeep || shop.shoeWaste
          ? 'The guide would lie off the sheet: lay a board of the same thickness beside it.'
          : 'The guide’s place stands here once the saw’s shoe is in Shop figures.'}
      </p>
    );
  return (
    <p class="keeps guideline">
      Guide’s edge at{' '}
      {onKeep && (
        <>
          <b>
            <Inline value={onKeep.value} tape={tape} />
          </b>{' '}
          on what is kept
        </>
      )}
      {onKeep && onWaste && ', or '}
      {onWaste && (
        <>
          <b>
            <Inline value={onWaste.value} tape={tape} />
          </b>{' '}
          on the other side
        </>
      )}
    </p>
  );
}
