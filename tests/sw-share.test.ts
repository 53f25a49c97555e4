import { describe, expect, test } from 'vitest';
import { manifest } from '../src/app/manifest';
import { type Arrival, mayBeShare, shareAddress, sharedFile } from '../src/sw-share';

const scope = 'https://shop.example/knifeline/';

const launch: Arrival = {
  url: 'https://shop.example/knifeline/share',
  mode: 'navigate',
  destination: 'document',
  referrer: '',
  origin: 'null',
  contentType: 'multipart/form-data; boundary=x',
};

describe('mayBeShare', () => {
  test('the address is the manifest’s', () => {
    expect(new URL(manifest.share_target.action, scope).href).toBe(shareAddress(scope));
    expect(manifest.share_target.enctype).toBe('multipart/form-data');
  });

  test.each<readonly [string, Partial<Arrival>]>([
    ['an opaque origin', {}],
    ['no origin', { origin: null }],
    ['the origin of the app itself', { origin: 'https://shop.example' }],
    ['no client to name as the referrer', { referrer: 'about:client' }],
    ['a phone app as the referrer', { referrer: 'android-app://org.example.files/' }],
  ])('takes a launch with %s', (_, part) => {
    expect(mayBeShare({ ...launch, ...part }, scope)).toBe(true);
  });

  test.each<readonly [string, Partial<Arrival>]>([
    ['a form on another site', { origin: 'https://other.example', referrer: 'https://other.example/' }],
    ['a form that shows its origin alone', { origin: 'https://other.example' }],
    ['a form that shows its referrer alone', { referrer: 'https://other.example/' }],
    ['another port', { origin: 'https://shop.example:8443' }],
    ['the app’s host without TLS', { origin: 'http://shop.example' }],
    ['an origin that begins alike', { origin: 'https://shop.example.other.example' }],
    ['a referrer of the same host', { referrer: 'https://shop.example/other/' }],
    ['a frame', { destination: 'iframe' }],
    ['an object', { destination: 'object' }],
    ['a request of a script', { mode: 'cors', destination: '' }],
    ['a request without credentials', { mode: 'no-cors', destination: '' }],
    ['another way to write a form', { contentType: 'application/x-www-form-urlencoded' }],
    ['plain text', { contentType: 'text/plain' }],
    ['no type', { contentType: null }],
    ['a type that only begins alike', { contentType: 'multipart/form-data-of-mine; boundary=x' }],
    ['a query', { url: `${launch.url}?job=1` }],
    ['a fragment', { url: `${launch.url}#job` }],
    ['a path below', { url: 'https://shop.example/knifeline/share/share' }],
    ['a path beside', { url: 'https://shop.example/share' }],
  ])('refuses %s', (_, part) => {
    expect(mayBeShare({ ...launch, ...part }, scope)).toBe(false);
  });
});

describe('sharedFile', () => {
  const [asked] = manifest.share_target.params.files;
  const name = asked?.name ?? '';
  const form = (...entries: readonly (readonly [string, string | File])[]): FormData => {
    const made = new FormData();
    for (const [key, value] of entries) made.append(key, value);
    return made;
  };
  const file = new File(['{}'], 'cabinet.json');

  test('takes the file under the manifest’s name, the first of several', async () => {
    const second = new File(['[]'], 'bench.json');
    const found = sharedFile(form([name, file], [name, second]));
    expect(await found?.text()).toBe('{}');
  });

  test.each([
    ['no field', form()],
    ['another name', form(['file', file])],
    ['a name beside it', form([name, file], ['title', 'Cabinet'])],
    ['text in place of a file', form([name, '{}'])],
  ])('refuses %s', (_, given) => {
    expect(sharedFile(given)).toBeUndefined();
  });
});
