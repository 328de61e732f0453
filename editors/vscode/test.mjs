// Opens a pattern in VS Code in a browser, types, and holds what the window shows
// against what it should: first what the extension adds, then each thing that the
// server can do.
import { features } from './features.mjs';
import { close, colours, different, editor, goTo, page, press, see, settings, start, text, type } from './window.mjs';

await start({ 'stitchproof.path': 'no-such-program' });
await see('the pattern', async () => (await editor()).includes('Rnd 5: [Sc in next 3 sts'));
await see('colours without a server', async () => different(await colours('Rnd 5: [Sc in next 3 sts, 2 sc in next st] 3', 'Rnd 5', 'Sc', '16 sts', 'times')));
await see('that the program is missing', async () => (await text('.notifications-toasts')).includes('"no-such-program" does not start'));

await settings({});
await see('the count at the end of its row', async () => (await editor()).match(/^Rnd 5: .*\(16 sts\).*= 15 sts$/m));
await see('the count after a clause', async () => (await editor()).match(/^Rnd 5: .*3 times ?15\./m));
await see('the totals over a heading', async () => (await text('.contentWidgets, .codelens-decoration')).includes('total 7 sts'));
await see('colours with the server', async () => different(await colours('Rnd 5: [Sc in next 3 sts, 2 sc in next st] 3', 'Rnd 5', 'Sc', '16 sts', 'times')));
await see('a fault in the status bar', async () => (await text('#status\\.problems')).trim().startsWith('1'));

await page.locator('.monaco-editor .view-lines').first().click({ position: { x: 300, y: 12 } });
await goTo(35);
await see('the count of the row under the cursor', async () => (await text('.statusbar-item')).includes('Rnd 5: 15 sts'));
await press('F8');
await see('what is wrong, at its place', async () => (await text('.monaco-editor .zone-widget')).includes('makes 15 sts, says 16'));
await press('Control+.');
await see('what would settle it', async () => (await text('.action-widget')).match(/15/));
await press('Enter');
await see('the count put right, unasked', async () => (await editor()).match(/^Rnd 5: .*\(15 sts\)/m));
await see('no fault any more', async () => (await text('#status\\.problems')).trim().startsWith('0'));

await goTo(59);
await press('End', 'Backspace', 'Backspace');
await type('9.');
await see('the new count after typing', async () => (await editor()).match(/^Row 1: .*= 8 sts$/m));
await press('ArrowDown');
await see('the new count in the status bar', async () => (await text('.statusbar-item')).includes('Row 1: 8 sts'));
await goTo(61);
await see('no count where there is no row', async () => !(await text('.statusbar-item')).match(/Row 1|Fasten off/));
await goTo(60);

await settings({ 'stitchproof.hints.running': false, 'stitchproof.hints.totals': false, 'stitchproof.lenses': false, 'stitchproof.tally': false });
await see('no counts where they are switched off', async () => !(await editor()).includes('= 8 sts'));
await see('no totals where they are switched off', async () => !(await text('.contentWidgets, .codelens-decoration')).includes('total'));
await see('no row in the status bar where it is switched off', async () => !(await text('.statusbar-item')).includes('Row 1:'));
await settings({});
await see('all of them again', async () => (await editor()).match(/^Row 1: .*= 8 sts$/m));

await goTo(60);
await press('End', 'Enter');
await type('rnd');
await press('Control+Space');
const snippet = page.locator('.suggest-widget .monaco-list-row', { has: page.locator('.codicon-symbol-snippet') }).first();
await see('a snippet among what is suggested', () => snippet.count());
await snippet.click();
await see('the round that it writes, counted', async () => (await editor()).match(/^Rnd 1: 6 sc in magic ring ?6?\. \(6 sts\)/m));
await press('Escape');

await features();
await close();
