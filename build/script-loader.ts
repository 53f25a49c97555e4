/**
 * Runs in the page before anything else. `script_` takes in what a script of the build makes, and `out_` what it
 * exports; `names_` makes one object of the names in it. `begin_` is told what comes with each script, and runs the one
 * it stands in. `bring_` fetches a script with all it cannot start without and gives what it exports: it rejects where
 * one of them does not come, and asks again the next time. Written into the build as it stands here, so it speaks of
 * nothing outside itself.
 *
 * @param self what these are set on
 */
export function scriptLoader(
  self: Record<string, unknown>,
  page: Pick<Document, 'currentScript' | 'createElement' | 'head' | 'querySelector'>,
): void {
  type Exports = Record<string, unknown>;
  type Make = (require: (name: string) => Exports, exports: Exports) => void;
  const makes: Record<string, Make> = {};
  const made: Record<string, Exports> = {};
  const asked: Record<string, Promise<void> | undefined> = {};
  const folder = (page.currentScript as HTMLScriptElement).src.replace(/[^/]*$/, '');
  const nameOf = (address: string): string => address.replace(/^.*\//, '');

  let withIt: Readonly<Record<string, readonly string[]>> = {};
  const own = (): string => nameOf((page.currentScript as HTMLScriptElement).src);

  const use = (address: string): Exports => {
    const name = nameOf(address);
    const make = makes[name];
    if (!make) throw new Error(`${name} is not here`);
    const exports = made[name];
    if (exports) return exports;
    const fresh: Exports = {};
    made[name] = fresh; // before it is whole: two scripts may name each other
    make(use, fresh);
    return fresh;
  };

  const fetched = (name: string): Promise<void> => {
    asked[name] ??= new Promise<void>((done, failed) => {
      const styles = name.endsWith('css');
      const src = folder + name;
      if (styles ? page.querySelector(`link[href$="${name}"]`) : makes[name]) return done();
      const el = page.createElement(styles ? 'link' : 'script') as HTMLLinkElement & HTMLScriptElement;
      if (styles) el.rel = 'stylesheet';
      el[styles ? 'href' : 'src'] = src;
      el.onload = () => done();
      el.onerror = () => {
        asked[name] = undefined;
        el.remove();
        failed(new TypeError(`${src} did not come`));
      };
      page.head.append(el);
    });
    return asked[name];
  };

  const bring = async (address: string): Promise<Exports> => {
    const name = nameOf(address);
    await Promise.all([name, ...(withIt[name] ?? [])].map(fetched));
    return use(name);
  };

  self.bring_ = bring;
  self.begin_ = (all: typeof withIt) => {
    withIt = all;
    use(own());
  };
  const out = (exports: Exports, all: Readonly<Record<string, () => unknown>>) => {
    for (const [name, get] of Object.entries(all))
      Object.defineProperty(exports, name, { enumerable: true, get });
  };
  self.out_ = out;
  self.names_ = {
    t: (all: Readonly<Record<string, () => unknown>>) => {
      const names: Exports = {};
      out(names, all);
      return names;
    },
  };
  self.script_ = (make: Make) => {
    makes[own()] = make;
  };
}
