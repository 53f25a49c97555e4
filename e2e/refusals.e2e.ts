import { expect, type Page, test } from '@playwright/test';
import { blankOf, choose, openSample, painted, shot, typed } from './app';

// alike: whoever is free takes the next
test.describe.configure({ mode: 'parallel' });

/** What is typed into a blank of the sample, and what is said there, before the keys are left. */
type Case = readonly [blank: string, typed: string, said: string | RegExp];

/** It cannot be: it is not taken, and stays half done in its blank. */
const refused: Readonly<Record<string, readonly Case[]>> = {
  './#/stock/sheeta': [
    // 30 pounds a square foot at most, 4 million at most
    ['How heavy it is by its area', '500', 'That is 470 lb a square foot too much: 0.1 lb a square foot to'],
    ['How stiff it is', '12', 'That is 8 million pounds a square inch too much: 0.1 million'],
    ['How stiff it is', '0', 'too little: 0.1 million pounds a square inch to 4 million'],
  ],
  './#/loads/case': [
    ['Abalone shells: how heavy', '0', 'any weight over 0 fits'],
    ['Abalone shells: how heavy', '2500', 'That is 500 lb over the 2000 lb it can be'],
    ['Abalone shells: how many', '0', '0 cannot be: 1 to 999 of them fits.'],
    ['Abalone shells: how long', '0', 'any length over 0 fits'],
    // its bay is 18 7/64 wide: 20 is 1 57/64 past
    [
      'Abalone shells: their middle',
      '20',
      'That is 1 57/64 past the right end of the shelf: 0 to 18 7/64 fits.',
    ],
  ],
  './#/lift/case': [
    [
      'What hardware and the rest that is no part weigh',
      '3000',
      'That is 1000 lb over the 2000 lb it can be',
    ],
    ['At the start: degrees turned to the side', '200', 'That is 20° past half a turn: 0 to 180 fits.'],
  ],
  './#/solid/case': [
    ['Moisture of the wood now, by a meter', '45', 'That is 15 % over the 30 % at which wood begins to move'],
    [
      'Driest air of the room, relative humidity',
      '15',
      'That air is 5 % drier than the 20 % the table begins at',
    ],
    ['Dampest air of the room, relative humidity', '98', 'That air is 3 % damper than the 95 %'],
  ],
  './#/room': [
    ['How far apart the two plumb lines hang', '0', 'A length is 1/2 to 192 inches.'],
    ['Place 1: wall to wall', '0', 'any length over 0 fits'],
    ['Place 1: wall to wall', '500', '500 inches? A place is 192 inches at most.'],
    ['Height 1: from the level line down to the floor', '0', 'any length over 0 fits'],
    ['Left corner: mark along the back wall', '0', 'any length over 0 fits'],
  ],
  './#/room/way': [
    ['On the way 1: clear width, stop to stop', '0', 'any length over 0 fits'],
    ['On the way 2: how wide it is before the turn', '0', 'any length over 0 fits'],
  ],
  './#/room/wall': [
    ['How thick a stud is', '0', 'any length over 0 fits'],
    ['Studs, centre to centre', '0', 'any length over 0 fits'],
    // inside from 4 1/8 + 23/32 to 64 1/4 - 23/32, and the cleat is 2 3/4 wide: 62 + 2 3/4 - 63 17/32
    [
      'How high the lower edge of the cleat stands',
      '62',
      'The upper edge of the cleat is 1 7/32 over the inside of the case: 4 27/32 to 60 25/32 fits',
    ],
    ['How high the lower edge of the cleat stands', '4', '27/32 under the inside of the case'],
  ],
  './#/level/case': [
    ['Feet in a row', '12', '12 is 3 more than there can be: 1 to 9 feet in a row fits.'],
    ['A wedge, at its thick end', '0', 'any length over 0 fits'],
  ],
};

/** It disagrees with what else was read: that is said while it is keyed, and it is taken. */
const asked: Readonly<Record<string, readonly Case[]>> = {
  './#/loads/case': [
    // deep 17 7/32 less what the case takes of it
    ['Abalone shells: how wide', '20', /too wide for it/],
    ['Abalone shells: how long', '20', '1 57/64 too long for it'],
    // 8 of 40 and 4.9 of itself over 249.5
    ['Abalone shells: how heavy', '40', /sags about .* too far\./],
  ],
  './#/solid/case': [
    ['Moisture of the wood now, by a meter', '14', 'The wood now is 2 % damper than its dampest of the year'],
    ['Least moisture of the year, by a meter', '10', 'drier than its driest of the year: read again.'],
  ],
  './#/room': [
    ['Place 1: how high over the floor', '32', /32 over the floor in front stands twice/],
    ['Left corner: across from mark to mark', '90', /across must lie between .* outside/],
    [
      'Height 1: from the level line down to the floor',
      '40',
      /differ by .* more than the 3 a floor may fall/,
    ],
    // a ceiling below the case: 64 1/4 high
    ['Height 1: from the level line up to the ceiling', '20', /too high\./],
    ['Left free at the left', '2 1/2', '5/8 too wide'],
  ],
  './#/room/way': [
    ['On the way 1: how wide the door itself is', '28', /the clear width is .* the door itself/],
    ['On the way 1: clear width, stop to stop', '15', /too little sideways/],
  ],
  './#/room/wall': [
    ['Studs, centre to centre', '1', /the spacing is 1\/2 short of being more than one is thick/],
    ['Where the cleat ends', '1', /1 too short, or its ends are turned round/],
  ],
  './#/level/case': [
    ['Down to the floor: front left foot', '30', /more than the 3 a floor may fall: one of them is misread/],
    ['Down to the floor: front left foot', '37', /3\/8 over the 3\/4 that shims are sound for/],
    ['A wedge, at its thin end', '1', /thicker than the thick end/],
  ],
  './#/scribe/case': [['Left edge 2: from edge to wall', '3/8', /It takes 1\/4 of overhang, 1\/16 more/]],
};

async function openTo(page: Page, hash: string): Promise<void> {
  await page.goto(hash);
  await painted(page); // what stood there before is gone
  await page.locator('main').waitFor();
}

test('what cannot be is refused at its blank, by how much and what would fit', async ({ page }) => {
  await openSample(page);
  const dock = page.getByRole('dialog');
  for (const [hash, cases] of Object.entries(refused)) {
    await openTo(page, hash);
    for (const [label, figure, said] of cases) {
      const blank = blankAt(page, label);
      const before = await blank.textContent();
      await blank.click();
      await key(page, figure);
      await dock.getByRole('button', { name: 'Done' }).click();
      await expect.soft(dock.getByRole('alert'), `${hash}: ${label}: ${figure}`).toContainText(said);
      await shot(page, `refused-${hash.slice(4).replaceAll('/', '-')}-${figure}`);
      await page.keyboard.press('Escape');
      await expect(dock).toBeHidden();
      const leave = page.getByRole('button', { name: 'Leave it out' });
      if (await leave.isVisible()) await leave.click();
      await expect.soft(blank, `${hash}: ${label} keeps what it held`).toHaveText(before ?? '');
    }
  }
});

test('what disagrees with the rest is said at its blank as it is keyed', async ({ page }) => {
  await openSample(page);
  const dock = page.getByRole('dialog');
  for (const [hash, cases] of Object.entries(asked)) {
    await openTo(page, hash);
    for (const [label, figure, said] of cases) {
      await blankAt(page, label).click();
      await key(page, figure);
      await expect.soft(dock.locator('.says'), `${hash}: ${label}: ${figure}`).toContainText(said);
      await shot(page, `asked-${hash.slice(4).replaceAll('/', '-')}-${figure.replace('/', '-')}`);
      await dock.getByRole('button', { name: 'Done' }).click();
      await expect(dock).toBeHidden();
      await page.getByRole('button', { name: /^Undo/ }).first().click();
    }
  }
});

/** A blank, or a place of a list, by how its name begins. */
const blankAt = (page: Page, label: string) => page.locator(`main [data-name^="${label}"]`).first();

/** By the field where there is one, else by the keys. */
async function key(page: Page, figure: string): Promise<void> {
  const dock = page.getByRole('dialog');
  const field = dock.getByRole('textbox');
  if ((await field.count()) > 0) return field.fill(figure);
  for (const digit of figure)
    await dock.getByRole('button', { name: digit, exact: true }).click({ delay: 60 });
}

test('feet that screw: a shortest longer than the longest is said at its blank', async ({ page }) => {
  await openSample(page);
  await openTo(page, './#/level/case');
  await choose(page, 'What is under the feet', 'feet that screw');
  for (const [label, figure] of [
    ['A foot at its longest', '3'],
    ['How long the foot on the high point stands', '2'],
  ] as const) {
    await blankOf(page, label).click();
    await typed(page, figure);
  }
  await blankOf(page, 'A foot at its shortest').click();
  await key(page, '4');
  await expect(page.getByRole('dialog').locator('.says')).toContainText('1 longer than at its longest');
});
