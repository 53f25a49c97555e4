import type { Tool } from '../../trade/machines/shop';
import { hasTool, toolOrder } from '../../trade/machines/tools';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { toolNames } from '../shared/limit-words';
import { keepLists, listsOf } from '../shared/shop-lists';
import * as words from './tool-order-words';

/** The order in which machines are tried for a cut: a tap on a row brings it one place up. */
export function ToolOrder({ bench }: { readonly bench: Bench }) {
  const { order } = listsOf(bench.settings.value);
  const tools = toolOrder({ ...(order ? { order } : {}) });
  const keep = (to: readonly Tool[] | undefined) => keepLists(bench, { order: to });
  return (
    <section aria-label={words.title}>
      <div class="sechead">
        <h2 class="sec">{words.title}</h2>
        {order && <Chip label={words.asUsual} onTap={() => keep(undefined)} />}
      </div>
      <p class="pad-x note">{order ? words.said : words.notSaid}</p>
      <ol>
        {tools.map((tool, k) => (
          <li key={tool} class="nextset">
            <span class="grow">
              {toolNames[tool]}
              {!hasTool(bench.shop.value, tool) && <span class="s muted block">{words.nothingKnown}</span>}
            </span>
            {k > 0 && (
              <button
                type="button"
                class="icon box"
                aria-label={words.up(toolNames[tool])}
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
const raised = (tools: readonly Tool[], k: number): readonly Tool[] =>
  tools.map((tool, j) => (j === k - 1 ? (tools[k] ?? tool) : j === k ? (tools[k - 1] ?? tool) : tool));
