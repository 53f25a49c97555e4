import type { Page } from '@playwright/test';

/** Storage that says so much later, in milliseconds, that it has kept something. Set with `storageTakes`. */
export const slowStorage = (page: Page) =>
  page.addInitScript(() => {
    const own = EventTarget.prototype.addEventListener;
    EventTarget.prototype.addEventListener = function add(this: EventTarget, type, heard, options) {
      const late = this instanceof IDBTransaction && this.mode === 'readwrite' && type === 'complete';
      if (!late || typeof heard !== 'function') return own.call(this, type, heard, options);
      const wait = Number(sessionStorage.getItem('storage takes') ?? 0);
      return own.call(this, type, (event) => void setTimeout(() => heard.call(this, event), wait), options);
    };
  });

/** Says how long it takes from now on. */
export const storageTakes = (page: Page, milliseconds: number) =>
  page.evaluate((wait) => sessionStorage.setItem('storage takes', `${wait}`), milliseconds);

/** A phone without room until `roomAgain`: the request succeeds, then the transaction ends for want of room. */
export const noRoom = (page: Page) =>
  page.evaluate(() => {
    const { add, put } = IDBObjectStore.prototype;
    Object.assign(window, { room: () => Object.assign(IDBObjectStore.prototype, { add, put }) });
    const full = (own: typeof add) =>
      function write(this: IDBObjectStore, ...args: Parameters<typeof add>) {
        const request = own.apply(this, args);
        request.addEventListener('success', () => {
          const error = { value: new DOMException('no room', 'QuotaExceededError') };
          Object.defineProperty(request.transaction, 'error', error);
          request.transaction?.abort();
        });
        return request;
      };
    Object.assign(IDBObjectStore.prototype, { add: full(add), put: full(put) });
  });
export const roomAgain = (page: Page) =>
  page.evaluate(() => (window as unknown as { room: () => void }).room());
