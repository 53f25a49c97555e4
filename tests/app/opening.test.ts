import { expect, test } from 'vitest';
import { besides } from '../../src/app/opening';

test('the list of jobs stands in for a screen that froze, and this phone’s page for the list', () =>
  expect([besides('#/cuts'), besides('#/'), besides('#/jobs')]).toEqual(['#/jobs', '#/jobs', '#/phone']));
