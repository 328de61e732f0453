// A VS Code in a browser, driven as a person would, and what its window shows. What
// should be seen and is not ends the run with code 1; what is seen may be kept as
// pictures, in the folder that SCREENSHOTS names.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright-core';

const { PATTERN, PORT, PROGRAM, SCREENSHOTS, TMPDIR } = process.env;

// usual is what a person has chosen who wants to see a pattern and little else.
const usual = {
  'stitchproof.path': PROGRAM,
  'chat.disableAIFeatures': true,
  'editor.cursorBlinking': 'solid',
  'editor.linkedEditing': true,
  'editor.minimap.enabled': false,
  'editor.overviewRulerBorder': false,
  'editor.scrollbar.vertical': 'hidden',
  'editor.stickyScroll.enabled': false,
  'files.autoSave': 'off',
  'workbench.editor.useModal': 'off',
  'workbench.reduceMotion': 'on',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
};

const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium', args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
});
export const page = await browser.newPage({ viewport: { width: 1500, height: 1500 } });
export const close = () => browser.close();

// start opens the window, once it is served, on a pattern and its folder.
export async function start(values) {
  writeFileSync(join(TMPDIR, 'user/User/settings.json'), JSON.stringify({ ...usual, ...values }));
  const payload = encodeURIComponent(JSON.stringify([['openFile', `vscode-remote://127.0.0.1:${PORT}${PATTERN}`]]));
  for (let tries = 0; ; tries++) {
    try {
      await page.goto(`http://127.0.0.1:${PORT}/?folder=${dirname(PATTERN)}&payload=${payload}`);
      return;
    } catch (err) {
      if (tries > 100) throw err;
      await page.waitForTimeout(200);
    }
  }
}

// see waits until holds gives something, and says what that is.
export async function see(what, holds) {
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
    await close();
    process.exit(1);
  }
  return seen;
}

const plain = (words) => words.replaceAll('\u00a0', ' ').replaceAll('\u200c', '');

// text is what all that a selector names says.
export const text = (selector) => page.locator(selector).allTextContents().then((all) => plain(all.join('\n')));

// editor is the text of the window's editor as it is drawn, a line each.
export async function editor() {
  const lines = await page.locator('.monaco-editor .view-line').evaluateAll((all) => all
    .map((line) => [line.getBoundingClientRect().top, line.textContent]).sort((a, b) => a[0] - b[0]).map(([, words]) => words));
  return plain(lines.join('\n'));
}

// colours gives the colour of the words of the line that begins with head.
export async function colours(head, ...words) {
  const spans = await page.locator('.monaco-editor .view-line').evaluateAll((all, begins) => {
    const line = all.find((one) => one.textContent.replaceAll('\u00a0', ' ').startsWith(begins));
    return [...line.querySelectorAll('span > span')].map((s) => [s.textContent, getComputedStyle(s).color]);
  }, head);
  return words.map((word) => spans.find(([said]) => plain(said).includes(word))?.[1]);
}

export const different = (list) => list.every(Boolean) && new Set(list).size === list.length;

export async function press(...keys) {
  for (const key of keys) await page.keyboard.press(key);
}

export const type = (words) => page.keyboard.type(words, { delay: 20 });

// asked types into the box that keys open, and takes what it offers once holds does.
async function asked(keys, words, holds = () => true) {
  await page.keyboard.press(keys);
  await page.locator('.quick-input-widget').waitFor({ state: 'visible' });
  await page.keyboard.type(words);
  await holds();
  await page.keyboard.press('Enter');
}

// gone waits until nothing of what a selector names is shown.
export const gone = (selector) => see(`no ${selector} any more`, async () => !(await page.locator(selector).filter({ visible: true }).count()));

export const command = (name) => asked('F1', name, () => see(`the command ${name}`,
  async () => (await text('.quick-input-list .monaco-list-row.focused')).includes(name)));

// settings writes a person's settings in the window, which is left at the pattern.
export async function settings(values) {
  await command('Preferences: Open User Settings (JSON)');
  await see('the settings', async () => (await text('.tab.active')).includes('settings.json'));
  await page.locator('.editor-instance .view-lines').first().click();
  await press('Control+A');
  await page.keyboard.insertText(JSON.stringify({ ...usual, ...values }));
  await press('Control+Shift+End', 'Delete', 'Control+S'); // without what closing brackets the editor itself added
  await see('the settings saved', async () => !(await page.locator('.tab.active.dirty').count()));
  await page.locator('.tab', { hasText: 'acorn.crochet' }).click();
  await away();
  await see('the pattern again', async () => (await text('.tab.active')).includes('acorn.crochet'));
}

// open shows a pattern of the folder, as it is on the disk.
export async function open(name) {
  await asked('Control+P', name, () => see(`${name} in the list`,
    async () => (await text('.quick-input-list .monaco-list-row.focused')).includes(name)));
  await gone('.quick-input-widget');
  await see(name, async () => (await text('.tab.active')).includes(name) && await page.locator('.inputarea:focus, .native-edit-context:focus').count());
}

// goTo puts the cursor at a line's beginning, or at one of its columns.
export async function goTo(line, column = 1) {
  await asked('Control+G', `${line}:${column}`);
  await gone('.quick-input-widget');
  await see(`the cursor in line ${line}`, async () => (await text('.statusbar-item')).includes(`Ln ${line}, Col ${column}`));
}

// put puts the cursor where the bar stands in words of a pattern of the folder, which
// is shown.
export async function put(name, words) {
  const content = readFileSync(join(dirname(PATTERN), name), 'utf8');
  const from = content.indexOf(words.replace('|', ''));
  if (from < 0) throw new Error(`${name} does not say ${words}`);
  const before = content.slice(0, from + words.indexOf('|')).split('\n');
  await goTo(before.length, before.at(-1).length + 1);
}

// back undoes what was typed since the pattern was opened.
export async function back() {
  await press('Escape', 'Escape', 'Escape');
  await command('File: Revert File');
  await see('the pattern as it was', async () => !(await page.locator('.tab.active.dirty').count()));
}

// replace writes another line in the place of the one with the cursor.
export async function replace(line) {
  await press('Home', 'Home', 'Shift+End');
  await page.keyboard.insertText(line);
}

// list is what stands in a list, row by row.
export const list = (selector) => page.locator(`${selector} .monaco-list-row`).evaluateAll((all) => all
  .map((row) => [row.getBoundingClientRect().top, row.getAttribute('aria-label') || row.textContent]).sort((a, b) => a[0] - b[0])
  .map(([, words]) => words).join('\n')).then(plain);

// away moves the pointer to where nothing is told of.
export const away = () => page.mouse.move(0, 0);

// films takes pictures of the upper lines of the editor, one after the other, the
// longer seen the higher its number after the name.
export function films(name, width, height) {
  let shots = 0;
  return async (hundredths) => {
    if (!SCREENSHOTS) return;
    const { left, top } = (await boxesOfLines(1, 1))[0];
    await page.screenshot({
      path: join(SCREENSHOTS, `${name}-${`${shots++}`.padStart(3, '0')}-${hundredths}.png`), clip: { x: left, y: top, width, height },
    });
  };
}

// picture keeps what the window shows of some of its parts: of what a selector names,
// or of lines, as [first, last]; without parts of all.
export async function picture(name, ...parts) {
  if (!SCREENSHOTS) return;
  mkdirSync(SCREENSHOTS, { recursive: true });
  const path = join(SCREENSHOTS, `${name}.png`);
  const boxes = (await Promise.all(parts.map((part) => (Array.isArray(part) ? boxesOfLines(...part) : boxesOf(part))))).flat();
  if (!boxes.length) {
    await page.screenshot({ path });
    return;
  }
  const left = Math.min(...boxes.map((b) => b.left)), right = Math.max(...boxes.map((b) => b.right));
  const top = Math.min(...boxes.map((b) => b.top)), bottom = Math.max(...boxes.map((b) => b.bottom));
  await page.screenshot({ path, clip: { x: left, y: top, width: right - left, height: bottom - top } });
}

const boxesOf = (selector) => page.locator(selector).evaluateAll((all) => all.map((one) => one.getBoundingClientRect())
  .filter((b) => b.width && b.height).map(({ left, right, top, bottom }) => ({ left, right, top, bottom })));

// boxesOfLines are the boxes of the numbers of lines and of all that stands between
// the first and the last.
const boxesOfLines = (first, last) => page.evaluate(([from, to]) => {
  const number = (n) => [...document.querySelectorAll('.editor-instance .line-numbers')].find((one) => one.textContent === `${n}`)?.getBoundingClientRect();
  if (!number(from)) throw new Error(`line ${from} is not shown`);
  const top = number(from).top, end = number(to + 1)?.top ?? number(to).bottom;
  const words = [...document.querySelectorAll('.editor-instance .view-line > span')].map((one) => one.getBoundingClientRect())
    .filter((b) => b.top >= top - 1 && b.bottom <= end + 1);
  return [{ left: number(from).left, right: Math.max(...words.map((b) => b.right)) + 8, top, bottom: end }];
}, [first, last]);
