import type { Page } from '@playwright/test';
import axe from 'axe-core';

/** What axe finds on the page as it stands, its contrasts alone if asked: run in the page, as none has frames. */
export async function violations(page: Page, contrast = false): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (contrast) => {
    const { run } = (window as unknown as { axe: typeof axe }).axe;
    const only = contrast ? { runOnly: { type: 'rule' as const, values: ['color-contrast'] } } : {};
    const found = await run(document, { resultTypes: ['violations'], ...only });
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target}`);
  }, contrast);
}
