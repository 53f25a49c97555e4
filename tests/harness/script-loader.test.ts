import { expect, test } from 'vitest';
import { scriptLoader } from '../../build/script-loader';

type Exports = Record<string, unknown>;
type Made = (require: (name: string) => Exports, exports: Exports) => void;
type El = {
  tag: string;
  src?: string;
  href?: string;
  rel?: string;
  onload(): void;
  onerror(): void;
  remove(): void;
};
type Loaded = {
  bring_: (address: string) => Promise<Exports>;
  begin_: (all: Record<string, readonly string[]>) => void;
  script_: (make: Made) => void;
  out_: (exports: Exports, all: Record<string, () => unknown>) => void;
  names_: { t: (all: Record<string, () => unknown>) => Exports };
};

const at = 'https://shop.example/app/assets/';

/** A page that asks a host for what is put into its head; the host has these scripts and sheets. */
function page(host: Record<string, Made | 'sheet'>) {
  const asked: string[] = [];
  const page = {
    currentScript: { src: `${at}index-1.js` } as { src: string } | null,
    createElement: (tag: string) => ({ tag, remove: () => undefined }) as El,
    querySelector: (): El | null => null,
    head: { append: (el: El) => queueMicrotask(() => came(el)) },
  };
  const self = {} as Loaded;
  function came(el: El): void {
    const src = el.src ?? el.href ?? '';
    asked.push(src.slice(at.length));
    const made = host[src.slice(at.length)];
    if (made !== undefined && made !== 'sheet') {
      page.currentScript = { src };
      self.script_(made);
      page.currentScript = null;
    }
    if (made) el.onload();
    else el.onerror();
  }
  scriptLoader(self as never, page as never);
  return { self, asked, page, host };
}

const first =
  (run: (self: Loaded) => void, self: () => Loaded): Made =>
  () =>
    run(self());

test('the first script runs at once; another comes with all it cannot start without, and they run in order', async () => {
  const order: string[] = [];
  const shop = page({
    'plan-1.js': (require, exports) => {
      exports.total = Number(require('./length-1.js').half) * 2;
      order.push('plan');
    },
    'length-1.js': (_, exports) => {
      exports.half = 4;
      order.push('length');
    },
    'plan-1.css': 'sheet',
  });
  let brought: Promise<Exports> | undefined;
  shop.self.script_(
    first(
      (self) => (brought = self.bring_('./plan-1.js')),
      () => shop.self,
    ),
  );
  shop.self.begin_({ 'plan-1.js': ['length-1.js', 'plan-1.css'] });
  expect((await brought)?.total).toBe(8);
  expect(order).toEqual(['length', 'plan']);
  expect([...shop.asked].sort()).toEqual(['length-1.js', 'plan-1.css', 'plan-1.js']);
});

test('a script is fetched and run once, however often it is asked for', async () => {
  let runs = 0;
  const shop = page({
    'later-1.js': (_, exports) => {
      runs += 1;
      exports.runs = runs;
    },
  });
  shop.self.script_(() => undefined);
  shop.self.begin_({});
  const [one, two] = await Promise.all([shop.self.bring_('./later-1.js'), shop.self.bring_('./later-1.js')]);
  expect(one).toBe(two);
  expect(await shop.self.bring_('./later-1.js')).toBe(one);
  expect([runs, shop.asked]).toEqual([1, ['later-1.js']]);
});

test('what does not come is named, nothing of it runs, and it is asked for again', async () => {
  let runs = 0;
  const shop = page({
    'later-1.js': () => {
      runs += 1;
    },
  });
  shop.self.script_(() => undefined);
  shop.self.begin_({ 'later-1.js': ['plan-1.js'] });
  await expect(shop.self.bring_('./later-1.js')).rejects.toThrow(`${at}plan-1.js did not come`);
  expect(runs).toBe(0);
  shop.host['plan-1.js'] = () => undefined;
  await shop.self.bring_('./later-1.js');
  expect([runs, shop.asked.filter((name) => name === 'plan-1.js').length]).toEqual([1, 2]);
});

test('a style sheet that the page has is not asked for again', async () => {
  const shop = page({ 'home-1.js': () => undefined, 'main-1.css': 'sheet' });
  shop.page.querySelector = () => ({ tag: 'link' }) as El;
  shop.self.script_(() => undefined);
  shop.self.begin_({ 'home-1.js': ['main-1.css'] });
  await shop.self.bring_('./home-1.js');
  expect(shop.asked).toEqual(['home-1.js']);
});

test('what a script exports is read when it is asked for: a value may change after the script has run', async () => {
  const shop = page({
    'plan-1.js': (_, exports) => {
      let cuts = 1;
      shop.self.out_(exports, { cuts: () => cuts, more: () => () => (cuts += 1) });
    },
  });
  shop.self.script_(() => undefined);
  shop.self.begin_({});
  const plan = await shop.self.bring_('./plan-1.js');
  expect(plan.cuts).toBe(1);
  (plan.more as () => void)();
  expect(plan.cuts).toBe(2);
});

test('one object of names gives what each stands for by now', () => {
  const { self } = page({});
  let cuts = 1;
  const names = self.names_.t({ cuts: () => cuts, board: () => 'side' });
  cuts += 1;
  expect({ ...names }).toEqual({ cuts: 2, board: 'side' });
});
