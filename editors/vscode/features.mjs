// Sees each thing that the server can do as VS Code shows it, on the example patterns,
// and takes the pictures of lsp/FEATURES.md. The acorn is the one of testdata/broken
// whose Rnd 5 says 16 and makes 15.
import {
  away, back, colours, command, different, editor, films, gone, goTo, list, open, page, picture, press, put, replace, see, settings, text, type,
} from './window.mjs';

const focused = '.monaco-list-row.focused';
const hover = '.monaco-hover:not(.hidden)';

const tab = (name) => see(name, async () => (await text('.tab.active')).includes(name));

// What is wrong, what would settle it, and what is known of the rule.
async function findings() {
  await open('acorn.crochet');
  await goTo(35);
  await press('F8');
  await see('a finding with what it rests on', async () => (await text('.zone-widget')).match(/makes 15 sts, says 16.*the row below makes 12 sts/s));
  await picture('finding', [33, 36], '.zone-widget .head', '.zone-widget .marker-widget');
  await page.locator('.zone-widget a', { hasText: 'count-mismatch' }).click({ modifiers: ['Control'] });
  await tab('count-mismatch.txt');
  await see('the page of the rule', async () => (await editor()).match(/^count-mismatch \(error, counts\)/m));
  await goTo(2);
  await picture('rule-page', [1, 22]);
  await press('Control+F4');
  await command('View: Toggle Problems');
  await see('what is wrong in every pattern of the folder', async () => (await text('.markers-panel-container')).match(/acorn\.crochet.*dormouse\.crochet/s));
  await picture('folder', '.markers-panel-container .monaco-list-row');
  await command('View: Toggle Problems');
}

async function fixes() {
  await open('acorn.crochet');
  await put('acorn.crochet', '(|16 sts)');
  await press('Control+.');
  await see('quick fixes, that of the count first', async () => (await text(`.action-widget ${focused}`)).includes('write 15 as the count'));
  await picture('quick-fixes', [33, 37], '.action-widget');
  await press('Enter');
  await see('the count put right', async () => (await editor()).match(/^Rnd 5: .*times ?15\. \(15 sts\)/m));
  await picture('quick-fix-made', [33, 37]);
  await back();
}

// What stands beside the text without being asked for.
async function counts() {
  await open('acorn.crochet');
  await goTo(57);
  await see('the count behind clauses and rows', async () => (await editor()).match(/^Rnd 9: .*3 times ?27\. \(27 sts\) ?= 27 sts$/m));
  await picture('counts', [47, 56]);
  await goTo(61);
  await see('what a piece comes to', async () => (await text('.codelens-decoration')).includes('total 208 sts · by kind: 204 sc, 3 inv dec, 1 sl st'));
  await picture('totals', [45, 49]);
  await put('acorn.crochet', 'Rnd 4: |[Sc in next 2 sts, 2');
  await page.locator('.statusbar-item', { hasText: 'Rnd 4:' }).hover();
  await see('the row in the status bar, and all of it on pointing there', async () => (await text('.workbench-hover')).includes('Change: +6 from Rnd 3'));
  await picture('status-bar', '.workbench-hover', '.statusbar-item:has-text("Rnd 4:")');
  await away();
  await gone('.workbench-hover');
  await open('hawthorn-twig.crochet');
  await put('hawthorn-twig.crochet', 'Piece: Spur|');
  await see('how far branches are worked', async () => (await editor()).match(/each ch of C ?15 ?C 3\/3, return to B ?B 2\/6/));
  await picture('branches', [21, 34]);
}

// What is told of what the writer points at.
async function cards() {
  for (const [name, file, words, says, ...lines] of [
    ['hover-row', 'hedge-walker-hat.crochet', 'Rn|d 8: Ch 1', 'Sizes: S (M, L, XL)', 38, 42],
    ['hover-clause', 'hawthorn-twig.crochet', 'sc in each |rem ch of A', 'Makes: 7 sts', 25, 28],
    ['hover-stitch', 'bramble-hedgehog-uk.crochet', 'h|tr in next st, tr in next 10', 'UK: htr', 58, 60],
    ['hover-gauge', 'acorn.crochet', '2|6 sc and 28 rnds', 'One stitch: 3.8 mm', 8, 9],
  ]) {
    await open(file);
    await put(file, words);
    await page.waitForTimeout(1500); // hints and totals still move the lines
    await command('Show or Focus Hover');
    await see(`the card of ${words}`, async () => (await text(hover)).includes(says));
    await picture(name, lines, hover);
    await press('Escape');
  }
}

// suggested types over words of the acorn, up to the bar in them, and waits for what
// is suggested.
async function suggested(words, typed, says) {
  await open('acorn.crochet');
  await put('acorn.crochet', words);
  await press('Shift+End', 'Delete');
  await type(typed);
  await page.waitForTimeout(500); // what is told unasked while typing
  await press('Escape', 'Escape', 'Control+Space');
  await see(`${says.source} among what is suggested`, async () => list('.suggest-widget').then((all) => all.match(says)));
}

async function suggestions() {
  await suggested('Rnd 6: |[Sc in next 4 sts', 'Sc in next 3 sts, sc in ', /in next st.*12 left/s);
  await picture('places', [34, 36], '.suggest-widget');
  await back();
  await suggested('Rnd 7: [Sc in next 2 sts, 2 sc in next st] 6 times. |(24', '', /\(24 sts\)/);
  await see('the count so far', async () => (await editor()).match(/^Rnd 7: .*6 times ?24\. ?= 24/m));
  await picture('closing-count', [36, 38], '.suggest-widget');
  await press('Enter');
  await see('a line break, whatever is suggested', async () => (await text('.statusbar-item')).includes('Ln 38, Col 1'));
  await back();
  await suggested('Rnd 7: [Sc in next 2 sts, 2 sc in next st] 6 times. |(24', '', /\(24 sts\)/);
  await press('Tab');
  await see('the count taken over', async () => (await editor()).match(/^Rnd 7: .*6 times ?24?\. \(24 sts\)/m));
  await back();
  await suggested('|Rnd 7: [Sc', '', /Rnd 7:/);
  await picture('next-row', [35, 37], '.suggest-widget');
  await back();
  await suggested('Rnd 6: |[Sc in next 4 sts', '2 s', /\bsc\b/);
  await see('what a suggested stitch is', async () => {
    if ((await text('.suggest-details')).includes('single crochet')) return true;
    await press('Control+Space'); // shows and hides what is known of it
    await page.waitForTimeout(1000);
    return false;
  });
  await picture('suggested-stitch', [34, 36], '.suggest-widget', '.suggest-details');
  await back();
  await suggested('Rnd 6: |[Sc in next 4 sts', '[Sc in next 4 sts, 2 ', /./);
  await press('Escape');
  await type('sc ');
  await see('how the stitch is made, and that its place comes next', async () => (await text('.parameter-hints-widget.visible')).match(/2 sc in next st.*How, in US terms/s));
  await picture('signature', [33, 36], '.parameter-hints-widget.visible');
  await back();
}

async function names() {
  await open('hawthorn-twig.crochet');
  await put('hawthorn-twig.crochet', 'branch |B: ch 7');
  await see('every mention of a branch', async () => (await page.locator('.wordHighlightText, .wordHighlight, .wordHighlightStrong').count()) === 3);
  await picture('highlights', [22, 27]);
  await press('Shift+F12');
  await see('where it is used', async () => (await text('.zone-widget')).includes('References (3)'));
  await picture('references', [22, 27], '.zone-widget');
  await press('Escape');
  await gone('.zone-widget');
  await press('F2');
  await page.locator('.rename-box input').fill('Haw');
  await picture('rename', [22, 27], '.rename-box');
  await page.locator('.rename-box input').press('Enter');
  await see('another name wherever it is called by it', async () => (await editor()).match(/branch Haw: .*return to Haw.*rem ch of Haw/s));
  await picture('renamed', [22, 27]);
  await back();
  await put('hawthorn-twig.crochet', 'branch B|: ch 7');
  await page.waitForTimeout(1000); // where else the name stands is asked for first
  await press('Backspace');
  await type('Hip');
  await see('all mentions change as one is typed', async () => (await editor()).match(/branch Hip: .*return to Hip.*rem ch of Hip/s));
  await picture('linked-editing', [22, 27]);
  await back();
  await open('acorn.crochet');
  await put('acorn.crochet', 'Rnd 3: [Sc in next |2 sts');
  await command('Peek Definition');
  await see('the clauses that a clause is worked into', async () => (await text('.zone-widget')).includes('Definitions (1)'));
  await picture('definition', [31, 33], '.zone-widget');
  await press('Escape');
}

async function structure() {
  await open('hawthorn-twig.crochet');
  await goTo(1);
  await command('Explorer: Focus on Outline View');
  await see('the outline with its counts', async () => (await text('.outline-pane')).match(/Twig.*Row 1.*76 sts/s));
  await page.locator('.pane', { has: page.locator('.explorer-folders-view') }).locator('.pane-header').click(); // makes place for it
  await away();
  await picture('outline', '.outline-pane .monaco-list-row');
  await command('View: Toggle Primary Side Bar Visibility');
  await open('hawthorn-twig.crochet');
  await press('Control+K', 'Control+0');
  await see('pieces folded', async () => !(await editor()).includes('branch A') && (await text('.codelens-decoration')).includes('total 76 sts'));
  await picture('folded', [1, 57], '.codelens-decoration');
  await press('Control+K', 'Control+J');
  await put('hawthorn-twig.crochet', 'sc in next |8 ch');
  await press('Shift+Alt+ArrowRight', 'Shift+Alt+ArrowRight');
  await see('the clause selected', async () => (await text('.statusbar-item')).includes(`(${'sc in next 8 ch'.length} selected)`));
  await picture('selection', [21, 34]);
  await press('ArrowLeft');
  await press('Control+T');
  await page.keyboard.type('leaf');
  await see('pieces of every pattern by name', async () => (await text('.quick-input-list')).match(/Leaf.*Hawthorn twig/s));
  await picture('workspace-symbols', '.quick-input-widget');
  await press('Escape');
  await gone('.quick-input-widget');
}

async function colouring() {
  await open('frost-fern.crochet');
  await goTo(11);
  await see('each word coloured by what it is', async () => different(await colours('Rnd 2: Ch 1, sc', 'Rnd 2', 'sc', '1')));
  await picture('colours', [13, 21]);
  await open('hawthorn-twig.crochet');
  await goTo(9);
  await see('swatches', async () => await page.locator('.view-lines .colorpicker-color-decoration').count() === 3);
  await picture('swatches', [4, 8]);
}

// An untidy row in the style that a house has: the settings are beside the pattern.
async function formatting() {
  await open('acorn.crochet');
  await put('acorn.crochet', 'Rnd 2: [Sc in next st, |2 sc in next st] 3 times');
  await replace('Rnd 2 :  [Sc in next st ,2 sc in next st ]  3 times,move marker up .  (9 sts)');
  await picture('untidy', [30, 33]);
  await command('Format Document');
  await see('the row in good order', async () => (await editor()).match(/^Rnd 2: \[Sc in next st, 2 sc in next st\] 3 times9?, move marker up\. \(9 sts\)/m));
  await picture('formatted', [30, 33]);
  await back();
}

async function links() {
  await open('acorn.crochet');
  await put('acorn.crochet', 'Notes|\nWorked');
  await replace('Notes: the twig that it hangs from is in hawthorn-twig.crochet.');
  await see('the name of a file as a link', async () => (await text('.detected-link')).match(/hawthorn-twig\.\s*crochet/));
  await picture('links', [24, 27]);
  await back();
}

async function walkthrough() {
  await command('Welcome: Open Walkthrough...');
  await see('the walkthrough in the list', async () => (await text('.quick-input-list')).includes('Write a pattern that adds up'));
  await page.keyboard.type('Write a pattern');
  await press('Enter');
  await see('its steps', async () => (await text('.gettingStartedContainer')).match(/Open a pattern.*Watch the count.*Settle what does not add up/s));
  await picture('walkthrough', '.gettingStartedDetailsContent .getting-started-category', '.gettingStartedDetailsContent .getting-started-step');
  await press('Control+F4');
}

// A pattern typed with live counts, its wrong count put right at last: for README.md.
async function live() {
  await settings({ '[crochet]': { 'editor.quickSuggestions': { other: 'off' }, 'editor.suggestOnTriggerCharacters': false, 'editor.parameterHints.enabled': false } });
  await press('Control+Alt+N');
  await tab('Untitled-1');
  await command('Change Language Mode');
  await page.keyboard.type('Crochet pattern');
  await see('the language', async () => (await text(`.quick-input-list ${focused}`)).includes('Crochet pattern'));
  await press('Enter');
  await gone('.quick-input-widget');
  await page.keyboard.insertText('Terms: US\n\nPiece: Acorn cup\nMake a magic ring.\n');
  await goTo(5);
  const shot = films('live', 820, 290);
  for (const row of ['Rnd 1: 6 sc in ring, place marker in first st. (6 sts)', 'Rnd 2: 2 sc in each st around. (12 sts)', 'Rnd 3: [Sc in next st, 2 sc in next st] 6 times. (16 sts)']) {
    for (const word of row.match(/\S+\s?/g)) {
      await type(word);
      await page.waitForTimeout(250); // as a person pauses
      await shot(20);
    }
    await press('End');
    await page.waitForTimeout(500);
    await shot(70);
    if (!row.startsWith('Rnd 3')) await press('Enter');
  }
  await see('the count that is typed wrong', async () => await page.locator('.squiggly-error').count() && (await editor()).includes('= 18 sts'));
  await shot(150);
  await press('ArrowLeft', 'ArrowLeft', 'Control+.');
  await see('what would settle it', async () => (await text(`.action-widget ${focused}`)).includes('write 18 as the count'));
  await shot(150);
  await press('Enter');
  await see('no fault any more', async () => !(await page.locator('.squiggly-error').count()) && (await editor()).match(/6 times ?18\. \(18 sts\)/));
  await shot(300);
}

const scenes = { findings, fixes, counts, cards, suggestions, names, structure, colouring, formatting, links, walkthrough, live };

// features goes through all scenes, or those that are named.
export async function features(...chosen) {
  await page.setViewportSize({ width: 1000, height: 900 });
  await away();
  await command('Notifications: Clear All Notifications');
  await command('View: Toggle Primary Side Bar Visibility');
  await open('acorn.crochet');
  await back();
  for (const [name, scene] of Object.entries(scenes)) {
    if (!chosen.length || chosen.includes(name)) await scene();
  }
}
