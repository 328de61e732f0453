// Starts `stitchproof lsp` and shows in the status bar what the row under the
// cursor makes. All else that a writer sees, VS Code draws from the server's answers.
'use strict';

const { execFile } = require('node:child_process');
const { promisify } = require('node:util');
const vscode = require('vscode');
const { LanguageClient, State } = require('vscode-languageclient/node');

const selector = { language: 'crochet' };
let client;
let starting = Promise.resolve(); // starts and stops follow one another

function activate(context) {
  context.subscriptions.push(
    vscode.commands.registerCommand('stitchproof.restart', restart),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration('stitchproof.path')) restart();
    }),
    tally(),
  );
  return restart();
}

function deactivate() {
  return client?.dispose();
}

function restart() {
  starting = starting.then(async () => {
    await client?.dispose();
    const command = vscode.workspace.getConfiguration('stitchproof').get('path');
    client = undefined;
    try {
      await promisify(execFile)(command, ['version']);
    } catch (reason) {
      missing(command, reason);
      return;
    }
    client = new LanguageClient('stitchproof', 'stitchproof', { command, args: ['lsp'] }, { documentSelector: [selector] });
    client.onDidChangeState(({ newState }) => { if (newState === State.Running) served.fire(); });
    await client.start();
  }).catch((reason) => vscode.window.showErrorMessage(`stitchproof counts nothing: ${reason.message ?? reason}`));
  return starting;
}

// missing says that the program does not start, and leads to where it is named.
async function missing(command, reason) {
  const choose = 'Say where it is';
  const why = reason.code === 'ENOENT' ? 'there is no such program' : reason.message;
  const answer = await vscode.window.showErrorMessage(`stitchproof counts nothing: "${command}" does not start, ${why}.`, choose);
  if (answer === choose) vscode.commands.executeCommand('workbench.action.openSettings', 'stitchproof.path');
}

const served = new vscode.EventEmitter(); // the server has come up

// tally keeps the status bar in step with the row under the cursor.
function tally() {
  const item = vscode.window.createStatusBarItem('stitchproof.tally', vscode.StatusBarAlignment.Right, 100);
  item.name = 'Count of the row';
  let newest = 0;
  const show = async () => {
    const mine = ++newest;
    const row = await rowAtCursor(vscode.window.activeTextEditor).catch(() => undefined);
    if (mine !== newest) return; // the cursor has gone on
    if (!row) {
      item.hide();
      return;
    }
    item.text = row.text;
    item.tooltip = row.card;
    item.show();
  };
  return vscode.Disposable.from(
    item, served,
    served.event(show),
    vscode.window.onDidChangeActiveTextEditor(show),
    vscode.window.onDidChangeTextEditorSelection(show),
    vscode.workspace.onDidChangeTextDocument(show),
    vscode.workspace.onDidChangeConfiguration(show),
  );
}

// rowAtCursor is what the server tells of the row that the cursor is in: its count,
// and all that a hover over its label says. What has no label is no row to count by.
async function rowAtCursor(editor) {
  if (!editor || !client?.isRunning() || !vscode.languages.match(selector, editor.document)) return undefined;
  if (!vscode.workspace.getConfiguration('stitchproof').get('tally')) return undefined;
  const { uri } = editor.document;
  const pieces = await vscode.commands.executeCommand('vscode.executeDocumentSymbolProvider', uri) ?? [];
  const row = pieces.flatMap((piece) => piece.children).find(({ range, selectionRange }) => range.contains(editor.selection.active) && !selectionRange.isEqual(range));
  if (!row) return undefined;
  const [hover] = await vscode.commands.executeCommand('vscode.executeHoverProvider', uri, row.selectionRange.start) ?? [];
  return { text: row.detail ? `${row.name}: ${row.detail}` : `${row.name}: ?`, card: hover?.contents[0] };
}

module.exports = { activate, deactivate };
