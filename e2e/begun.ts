import { expect, type Page } from '@playwright/test';
import { fileOf } from './bench/lists.mjs';

// A case whose sizes and sheet stand, and drawers whose opening and sheets do, for tests of what is done to them next:
// taken in as a file here, keyed blank by blank in bookcase.e2e.ts, hall-bookcase.e2e.ts and others.

/** By field, as they are kept: lengths `45/4`. */
type Fields = Readonly<Record<string, unknown>>;

type Begun = {
  /** What the sheet is planned as; nothing of it is measured then, unless it is read too. */
  readonly planned?: string;
  /** What the sheet was read as at one corner. */
  readonly read?: string;
  /** Outside sizes, and what else of the case is said. */
  readonly case: Fields;
};

/** Leads to the page of the case. */
export async function caseBegun(page: Page, { read, planned, case: said }: Begun): Promise<void> {
  await takenIn(page, [
    ...under('cases/c1', { name: 'Case', hold: 'outside', sideStock: 's1', ...said }),
    ...under('stock/s1', { name: 'Sheet A', ...(planned && { planned }), ...(read && reading(read)) }),
  ]);
  await page.goto('./#/case/c1');
  await expect(page.locator('main').getByRole('button', { name: /^Outside width/ })).toBeVisible();
}

/**
 * Leads to the page of their wood.
 *
 * @param said opening and boxes; the sheets of fronts, box sides and bottoms were read 3/4, 1/2 and 1/4
 */
export async function drawersBegun(page: Page, said: Fields): Promise<void> {
  await takenIn(page, [
    ...under('banks/d1', { name: 'Drawers', fit: 'inset', ...said }),
    ...under('banks/d1', { frontStock: 's1', sideStock: 's2', boxBottomStock: 's3' }),
    ...under('stock/s1', { name: 'Sheet A', ...reading('3/4') }),
    ...under('stock/s2', { name: 'Sheet B', ...reading('1/2') }),
    ...under('stock/s3', { name: 'Sheet C', ...reading('1/4') }),
  ]);
  await page.goto('./#/bank/d1/wood');
  await expect(page.getByRole('button', { name: 'What the fronts are of' })).toBeVisible();
}

const reading = (size: string): Fields => ({ 'reading/r1/size': size, asRead: true });

const under = (at: string, fields: Fields) =>
  Object.entries(fields).map(([field, value]) => [`${at}/${field}`, value] as const);

async function takenIn(page: Page, values: readonly (readonly [string, unknown])[]): Promise<void> {
  const buffer = Buffer.from(fileOf(new Map([['name', 'New job'], ['tape', '1/32'], ...values])));
  await page.goto('./#/import');
  await page.setInputFiles('input[type=file]', { name: 'job.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByRole('heading', { name: 'New job' })).toBeVisible();
}
