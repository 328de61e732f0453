// Opens a pattern in VS Code in a browser, types, and holds what the window shows
// against what it should. Ends with code 1 at the first thing that is not seen;
// leaves a picture of the window at SCREENSHOTS, where that names a folder.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright-core';

const { PATTERN, PORT, PROGRAM, SCREENSHOTS, TMPDIR } = process.env;
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium', args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
});
const page = await browser.newPage({ viewport: { width: 1500, height: 1500 } });

const picture = (name) => {
  if (!SCREENSHOTS) return undefined;
  mkdirSync(SCREENSHOTS, { recursive: true });
  return page.screenshot({ path: join(SCREENSHOTS, `${name}.png`) });
};

// see waits until holds gives something, and says what that is.
async function see(what, holds) {
  const end = Date.now() + 20_000;
  let seen, trouble;
  while (!seen && Date.now() < end) {
    try {
      seen = await holds();
    } catch (err) {
      trouble = err; // the window is being drawn
    }
    if (!seen) await page.waitForTimeout(200);
  }
  console.log(`${seen ? 'seen' : 'NOT SEEN'}: ${what}`);
  if (!seen) {
    await picture('not-seen');
    console.log(trouble ?? '', await editor());
    await browser.close();
    process.exit(1);
  }
  return seen;
}

const plain = (text) => text.replaceAll('\u00a0', ' ').replaceAll('\u200c', '');

// editor is the text of the window's editor as it is drawn, a line each.
async function editor() {
  const lines = await page.locator('.monaco-editor .view-line').evaluateAll((all) => all
    .map((line) => [line.getBoundingClientRect().top, line.textContent]).sort((a, b) => a[0] - b[0]).map(([, text]) => text));
  return plain(lines.join('\n'));
}

// colours gives the colour of the words of the line that begins with head.
async function colours(head, ...words) {
  const spans = await page.locator('.monaco-editor .view-line').evaluateAll((all, start) => {
    const line = all.find((one) => one.textContent.replaceAll('\u00a0', ' ').startsWith(start));
    return [...line.querySelectorAll('span > span')].map((s) => [s.textContent, getComputedStyle(s).color]);
  }, head);
  return words.map((word) => spans.find(([text]) => plain(text).includes(word))?.[1]);
}

const different = (list) => list.every(Boolean) && new Set(list).size === list.length;

const usual = {
  'stitchproof.path': PROGRAM,
  'workbench.secondarySideBar.defaultVisibility': 'hidden', 'editor.minimap.enabled': false, 'workbench.editor.useModal': 'off',
};

async function command(name) {
  await page.keyboard.press('F1');
  await page.keyboard.type(name);
  await see(`the command ${name}`, async () => (await text('.quick-input-list .monaco-list-row.focused')).includes(name));
  await page.keyboard.press('Enter');
}

// settings writes a person's settings in the window, which is left at the pattern.
async function settings(values) {
  await command('Preferences: Open User Settings (JSON)');
  await see('the settings', async () => (await text('.tab.active')).includes('settings.json'));
  await page.locator('.editor-instance .view-lines').first().click();
  await page.keyboard.press('Control+A');
  await page.keyboard.insertText(JSON.stringify({ ...usual, ...values }));
  await page.keyboard.press('Control+Shift+End'); // what closing brackets the editor itself added
  await page.keyboard.press('Delete');
  await page.keyboard.press('Control+S');
  await see('the settings saved', async () => !(await page.locator('.tab.active.dirty').count()));
  await page.locator('.tab', { hasText: 'acorn.crochet' }).click();
  await see('the pattern again', async () => (await text('.tab.active')).includes('acorn.crochet'));
}

async function goTo(line) {
  await page.keyboard.press('Control+G');
  await page.keyboard.type(`${line}`);
  await page.keyboard.press('Enter');
}

const text = (selector) => page.locator(selector).allTextContents().then((all) => plain(all.join('\n')));

writeFileSync(join(TMPDIR, 'user/User/settings.json'), JSON.stringify({ ...usual, 'stitchproof.path': 'no-such-program' }));
const payload = encodeURIComponent(JSON.stringify([['openFile', `vscode-remote://127.0.0.1:${PORT}${PATTERN}`]]));
for (let tries = 0; ; tries++) { // until it serves
  try {
    await page.goto(`http://127.0.0.1:${PORT}/?folder=${dirname(PATTERN)}&payload=${payload}`);
    break;
  } catch (err) {
    if (tries > 100) throw err;
    await page.waitForTimeout(200);
  }
}

await see('the pattern', async () => (await editor()).includes('Rnd 5: [Sc in next 3 sts'));
await see('colours without a server', async () => different(await colours('Rnd 5: [Sc in next 3 sts, 2 sc in next st] 3', 'Rnd 5', 'Sc', '16 sts', 'times')));
await see('that the program is missing', async () => (await text('.notifications-toasts')).includes('"no-such-program" does not start'));
await picture('without-a-server');

await settings({});
await see('the count at the end of its row', async () => (await editor()).match(/^Rnd 5: .*\(16 sts\).*= 15 sts$/m));
await see('the count after a clause', async () => (await editor()).match(/^Rnd 5: .*3 times ?15\./m));
await see('the totals over a heading', async () => (await text('.contentWidgets, .codelens-decoration')).includes('total 7 sts'));
await see('colours with the server', async () => different(await colours('Rnd 5: [Sc in next 3 sts, 2 sc in next st] 3', 'Rnd 5', 'Sc', '16 sts', 'times')));
await see('a swatch at a colour word', () => page.locator('.view-lines .colorpicker-color-decoration').count());
await see('a fault in the status bar', async () => (await text('#status\\.problems')).trim().startsWith('1'));

await page.locator('.monaco-editor .view-lines').first().click({ position: { x: 300, y: 12 } });
await goTo(35);
await see('the count of the row under the cursor', async () => (await text('.statusbar-item')).includes('Rnd 5: 15 sts'));
await page.keyboard.press('F8');
await see('what is wrong, at its place', async () => (await text('.monaco-editor .zone-widget')).includes('makes 15 sts, says 16'));
await picture('a-finding');
await page.keyboard.press('Control+.');
await see('what would settle it', async () => (await text('.action-widget')).match(/15/));
await picture('quick-fixes');
await page.keyboard.press('Enter');
await see('the count put right, unasked', async () => (await editor()).match(/^Rnd 5: .*\(15 sts\)/m));
await see('no fault any more', async () => (await text('#status\\.problems')).trim().startsWith('0'));

await goTo(59);
await page.keyboard.press('End');
await page.keyboard.press('Backspace');
await page.keyboard.press('Backspace');
await page.keyboard.type('9.');
await see('the new count after typing', async () => (await editor()).match(/^Row 1: .*= 8 sts$/m));
await page.keyboard.press('ArrowDown');
await see('the new count in the status bar', async () => (await text('.statusbar-item')).includes('Row 1: 8 sts'));

await settings({ 'stitchproof.hints.running': false, 'stitchproof.hints.totals': false, 'stitchproof.lenses': false, 'stitchproof.tally': false });
await see('no counts where they are switched off', async () => !(await editor()).includes('= 8 sts'));
await see('no totals where they are switched off', async () => !(await text('.contentWidgets, .codelens-decoration')).includes('total'));
await see('no row in the status bar where it is switched off', async () => !(await text('.statusbar-item')).includes('Row 1:'));
await settings({});
await see('all of them again', async () => (await editor()).match(/^Row 1: .*= 8 sts$/m));

await goTo(60);
await page.keyboard.press('End');
await page.keyboard.press('Escape'); // what is suggested at a row's end
await page.keyboard.press('Enter');
await page.keyboard.type('rnd');
await page.keyboard.press('Control+Space');
const snippet = page.locator('.suggest-widget .monaco-list-row', { has: page.locator('.codicon-symbol-snippet') }).first();
await see('a snippet among what is suggested', () => snippet.count());
await snippet.click();
await see('the round that it writes, counted', async () => (await editor()).match(/^Rnd 1: 6 sc in magic ring ?6?\. \(6 sts\)/m));
await page.keyboard.press('Escape');

await command('Welcome: Open Walkthrough...');
await see('the walkthrough in the list', async () => (await text('.quick-input-list')).includes('Write a pattern that adds up'));
await picture('walkthrough');
await browser.close();
