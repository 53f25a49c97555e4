import { useSignalEffect } from '@preact/signals';
import { useEffect, useLayoutEffect } from 'preact/hooks';
import type { Bench } from '../screens/bench';
import { First } from '../screens/job/first';
import type { Route } from '../screens/routes';
import { type Tab, Tabs } from '../ui/bar';
import { home, later, laterMissing, planningHere } from './bring-later';
import './app.css';

/** The screen of the route, the tabs where there are any, and what went wrong. */
export function App({ bench }: { readonly bench: Bench }) {
  useSignalEffect(() => dress(bench));
  useEffect(() => {
    const scheme = darkPhone();
    const again = () => dress(bench);
    scheme.addEventListener('change', again);
    return () => scheme.removeEventListener('change', again);
  }, [bench]);
  const route = bench.route.value;
  const screen = `${route.at} ${'board' in route ? route.board : 'id' in route ? route.id : ''}`;
  // a screen opens at its top, or where it scrolls itself; not where the one before it was left
  useLayoutEffect(() => scrollTo(0, 0), [screen]);
  const tabs = tabsFor(route);
  return (
    <>
      {later.value ? <later.value.Trouble bench={bench} /> : bench.unsaved.value.length > 0 && <NotKept />}
      {laterMissing.value && <Missing />}
      {later.value && <later.value.HalfDone bench={bench} />}
      {later.value && <later.value.TimersOver bench={bench} />}
      {bench.underWay.value && <Saving />}
      <Screen route={route} bench={bench} />
      {tabs && <Tabs tabs={tabs} />}
      {later.value && <later.value.Calipers bench={bench} />}
    </>
  );
}

/** What is on the screen is on its way to storage, and not kept before this is gone. */
const Saving = () => (
  <div class="over-page saving-line" role="status">
    Saving
  </div>
);

/** Until what names it is there. */
const NotKept = () => (
  <div class="refusal" role="alert">
    <p>What was changed last is not saved.</p>
  </div>
);

type ScreenProps = { readonly route: Route; readonly bench: Bench };

function Screen({ route, bench }: ScreenProps) {
  switch (route.at) {
    case 'job':
    case 'last':
      return <Home bench={bench} />;
    default:
      return later.value ? <later.value.LaterScreen route={route} bench={bench} /> : <main class="page" />;
  }
}

/** The job in hand; before any, four things to tap. */
function Home({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const there = home.value;
  if (job && there) return <there.JobScreen {...{ bench, job }} later={later.value} />;
  const isKept = !there && bench.shelf.jobs.value.some(({ deleted }) => deleted === undefined);
  return isKept ? <main class="page" /> : <First bench={bench} begin={begin} />;
}

/** What a tap on the page before any job begins with; where its file did not come, the page says so. */
const begin = {
  board: async (bench: Bench) => (await planningHere()).layOutBoard(bench),
  case: async (bench: Bench) => (await planningHere()).newCaseIn(bench),
};

/** A file of the app did not come through: it is asked for again by opening the page again. */
const Missing = () => (
  <div class="refusal">
    <p>A part of the app did not come through: not every page can be shown. What is kept is untouched.</p>
    <button type="button" class="btn main" onClick={() => location.reload()}>
      Open again
    </button>
  </div>
);

/** Bottom bar on the pages one wanders between; a page that does one thing has none. */
function tabsFor(route: Route): readonly Tab[] | undefined {
  if (!['job', 'boards', 'jobs', 'cuts', 'sheets'].includes(route.at)) return undefined;
  return [
    { label: 'Job', icon: 'job', href: '#/', current: route.at === 'job' || route.at === 'jobs' },
    { label: 'Marks', icon: 'marks', href: '#/boards', current: route.at === 'boards' },
    { label: 'Cuts', icon: 'cuts', href: '#/cuts', current: route.at === 'cuts' },
    { label: 'Sheets', icon: 'sheets', href: '#/sheets', current: route.at === 'sheets' },
    { label: 'Figure', icon: 'figure', href: '#/figure', current: false },
  ];
}

const darkPhone = () => matchMedia('(prefers-color-scheme: dark)');

/** Theme, hand and text size go on the page itself, so that drawings follow without being drawn again. */
function dress(bench: Bench): void {
  const { theme, hand, text } = bench.settings.value;
  const dark = theme === 'blued' || (theme === 'phone' && darkPhone().matches);
  const page = document.documentElement;
  page.dataset.theme = dark ? 'blued' : 'satin';
  page.classList.toggle('hand-left', hand === 'left');
  page.classList.toggle('text-200', text === 'large');
  const large = Number.parseFloat(getComputedStyle(page).fontSize) >= 24;
  page.classList.toggle('text-xl', large);
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', dark ? '#0C1014' : '#D3DADE');
}
