import type { Shop } from '../../trade/machines/shop';
import { hasTool, takerBy, toolOrder } from '../../trade/machines/tools';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { takerName } from '../shared/limit-words';
import { keepLists, listsOf } from '../shared/shop-lists';
import * as words from './tool-order-words';

/** The order in which machines are tried for a cut: a tap on a row brings it one place up. */
export function ToolOrder({ bench }: { readonly bench: Bench }) {
  const { order, own } = listsOf(bench.settings.value);
  const tools = toolOrder({ order, own });
  const takers = tools.flatMap((id) => takerBy({ own }, id) ?? []);
  const keep = (to: Shop['order']) => keepLists(bench, { order: to });
  return (
    <section aria-label={words.title}>
      <div class="sechead">
        <h2 class="sec">{words.title}</h2>
        {order && <Chip label={words.asUsual} onTap={() => keep(undefined)} />}
      </div>
      <p class="pad-x note">{order ? words.said : words.notSaid}</p>
      <ol>
        {takers.map((taker, k) => (
          <li key={tools[k]} class="nextset">
            <span class="grow">
              {takerName(taker)}
              {!hasTool(bench.shop.value, taker) && <span class="s muted block">{words.nothingKnown}</span>}
            </span>
            {k > 0 && (
              <button
                type="button"
                class="icon box"
                aria-label={words.up(takerName(taker))}
                onClick={() => keep(raised(tools, k))}
              >
                <Icon name="up" />
              </button>
            )}
          </li>
        ))}
      </ol>
      {!order && (
        <div class="pad-x chips">
          <Chip label={words.keepThis} onTap={() => keep(tools)} />
        </div>
      )}
    </section>
  );
}

/** One tool a place up. */
const raised = <T,>(tools: readonly T[], k: number): readonly T[] =>
  tools.map((tool, j) => (j === k - 1 ? (tools[k] ?? tool) : j === k ? (tools[k - 1] ?? tool) : tool));
