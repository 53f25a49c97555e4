import { ratio } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { SheetSaws } from '../../plan/sheet-saws';
import type { Shop } from '../../trade/machines/shop';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import { capital } from '../shared/capital';
import { ownName } from '../shared/machines/machine-names';
import { InlineMark } from '../shared/mark-and-rest';
import * as words from './words';
import './layout.css';

type CutPanelProps = {
  readonly step: CutStep;
  readonly done: boolean;
  readonly tape: Tape;
  readonly saws: SheetSaws;
  readonly stick: boolean;
  readonly name: (piece: string) => string;
};

/** The cut to be made: its figure, from which edge, which side is kept, and where the guide goes. */
export function CutPanel({ step, done, tape, name, saws, stick }: CutPanelProps) {
  const saw = stick ? undefined : step.tool === 'fence' ? saws.fence : saws.guide;
  const keepNear = step.keep === 'near';
  const kept = keepNear ? step.nearIs : step.farIs;
  const other = keepNear ? step.farIs : step.nearIs;
  const keptSize = keepNear ? step.near : step.far;
  const otherSize = keepNear ? step.far : step.near;
  return (
    <section class="cutnow" aria-label={words.cutNo(step.no)}>
      <span class={done ? 'badge done' : 'badge'} aria-hidden="true">
        {done ? '✓' : step.no}
      </span>
      <div class="t">
        {words.cutTitle(step)}
        <span class="s muted block">{words.fromWords(step)}</span>
        {saw && <span class="s block">{ownName(saw)}</span>}
      </div>
      <div class="cutfig">
        <Mixed value={step.figure.value} rest={step.figure.rest} size="arm" tape={tape} />
        <Remainder rest={step.figure.rest} tape={tape} by={false} />
      </div>
      {step.tool === 'guide' && !stick && <GuideLine step={step} tape={tape} shop={saws.shop} />}
      <p class="keeps">
        <b>{capital(words.sideWords(kept, name))}</b>{' '}
        <span class="nb">{words.sizeWords(keptSize, tape)}</span> {words.kept}
        {step.tool === 'guide' && words.kerfSide(keepNear)}
        {other.is !== 'waste' && (
          <>
            {words.otherSide(words.sideWords(other, name))}{' '}
            <span class="nb">{words.sizeWords(otherSize, tape)}</span>
          </>
        )}
      </p>
      {step.heavy && step.weight && (
        <p class="fact warn">
          <Icon name="warn" />
          {words.heavy(step.weight, [step.nearWeight ?? nothing, step.farWeight ?? nothing])}
        </p>
      )}
    </section>
  );
}

const nothing = ratio(0n);

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
    return shop.shoeKeep || shop.shoeWaste ? (
      <p class="s keeps">{words.guideOff}</p>
    ) : (
      <p class="keeps">
        <a class="linklike" href="#/shop">
          {words.guideUnknown}
        </a>
      </p>
    );
  return (
    <p class="keeps guideline">
      {words.guideAt}{' '}
      {onKeep && (
        <>
          <b>
            <InlineMark mark={onKeep} tape={tape} />
          </b>{' '}
          {words.onKept}
        </>
      )}
      {onKeep && onWaste && ', or '}
      {onWaste && (
        <>
          <b>
            <InlineMark mark={onWaste} tape={tape} />
          </b>{' '}
          {words.onOther}
        </>
      )}
    </p>
  );
}
