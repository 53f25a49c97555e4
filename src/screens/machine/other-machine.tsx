import type { Checklist } from '../../plan/checklist';
import { type OnTool, throughOn } from '../../plan/through-on';
import { takerId } from '../../trade/machines/own-machine';
import type { Card } from '../../trade/setups/checklist';
import { ChoiceDock } from '../../ui/dock';
import type { Bench } from '../bench';
import { asksText, lacksText, movedTo, takerName } from '../shared/limit-words';
import { moveCuts } from '../shared/move-cut';
import { reachOf } from '../shared/shop-lists';
import * as words from './words';

type OtherProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Card;
  readonly onClose: () => void;
};

/** On what the pieces of a card are ripped or cut to length: every tool with what it lacks, or what it is set to. */
export function OtherMachine({ bench, list: { plan }, card: { operations }, onClose }: OtherProps) {
  const found = throughOn(operations, plan, reachOf(bench));
  if (!found) return null;
  const { tape } = plan.job;
  const hint = ({ way }: OnTool): string =>
    lacksText(way, tape) || asksText(way.asks, way.own) || words.reaches(way.figure, tape);
  return (
    <ChoiceDock<ReturnType<typeof takerId> | 'first'>
      title={words.whereCut(found.need.cut)}
      choices={[
        { value: 'first', label: words.firstThatCan, hint: words.asShopSays(bench.shop.value.order) },
        ...found.tools.map((on) => ({
          value: takerId(on.taker),
          label: takerName(on.taker),
          hint: hint(on),
        })),
      ]}
      chosen={found.chosen ? takerId(found.chosen) : 'first'}
      onChoose={(id) => {
        const to = found.tools.find(({ taker }) => takerId(taker) === id)?.taker;
        onClose();
        void moveCuts(bench, operations, { label: to ? movedTo(to) : words.firstThatCan, to });
      }}
      onClose={onClose}
    />
  );
}
