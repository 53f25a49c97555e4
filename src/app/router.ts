import { type Signal, signal } from '@preact/signals';
import type { Settings } from '../job/settings';
import { type Route, readRoute, writeRoute } from '../screens/routes';

export type Router = {
  /** The screen the address names. */
  readonly route: Signal<Route>;
  readonly go: (to: Route, replace?: boolean) => void;
  /** The address may have changed by itself: it is looked at again, and kept as the place to come back to. */
  readonly arrived: () => void;
};

/** Where the user is: in the address, and kept for the next start. */
export function makeRouter(
  settings: Signal<Settings>,
  keep: (patch: Partial<Settings>) => Promise<void>,
): Router {
  const route = signal<Route>(readRoute(location.hash));

  function arrived(): void {
    const asked = readRoute(location.hash);
    if (asked.at === 'last') history.replaceState(null, '', settings.value.saw ?? '#/');
    route.value = readRoute(location.hash);
    const here = writeRoute(route.value);
    if (here === settings.value.here) return;
    const atMachine = route.value.at === 'saw' || route.value.at === 'setup';
    void keep(atMachine ? { here, saw: here } : { here });
  }

  function go(to: Route, replace = false): void {
    const hash = writeRoute(to);
    // a state says that the entry before this one is a screen of ours
    if (replace) history.replaceState(history.state, '', hash);
    else if (hash !== location.hash) history.pushState(1, '', hash);
    arrived();
  }

  // a link's own entry would not say so
  addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a[href^="#/"]') : null;
    if (!link || event.defaultPrevented || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    go(readRoute(link.getAttribute('href') ?? ''));
  });
  addEventListener('hashchange', arrived);
  addEventListener('popstate', arrived);
  return { route, go, arrived };
}
