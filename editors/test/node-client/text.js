// Positions and edits of a text, counted in UTF-16 units as the protocol does by default.
'use strict';

function offsetAt(text, { line, character }) {
  let start = 0;
  for (let i = 0; i < line; i++) {
    const end = text.indexOf('\n', start);
    if (end < 0) {
      return text.length;
    }
    start = end + 1;
  }
  const end = text.indexOf('\n', start);
  return Math.min(start + character, end < 0 ? text.length : end);
}

function positionAt(text, offset) {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1).length };
}

/** The place of a piece of the text; `skip` counts its earlier occurrences. */
function rangeOf(text, piece, skip = 0) {
  let at = text.indexOf(piece);
  for (let i = 0; i < skip && at >= 0; i++) {
    at = text.indexOf(piece, at + 1);
  }
  if (at < 0) {
    throw new Error(`'${piece}' is not in the text`);
  }
  return { start: positionAt(text, at), end: positionAt(text, at + piece.length) };
}

const textIn = (text, range) => text.slice(offsetAt(text, range.start), offsetAt(text, range.end));

function applyEdits(text, edits) {
  const sorted = edits
    .map((edit) => ({ start: offsetAt(text, edit.range.start), end: offsetAt(text, edit.range.end), newText: edit.newText }))
    .sort((a, b) => b.start - a.start || b.end - a.end);
  let limit = Infinity;
  for (const { start, end, newText } of sorted) {
    if (end > limit || start > end) {
      throw new Error(`edits overlap: ${JSON.stringify(edits)}`);
    }
    text = text.slice(0, start) + newText + text.slice(end);
    limit = start;
  }
  return text;
}

/** The edits of one document in a workspace edit, in either of its two forms. */
function editsOf(workspaceEdit, uri) {
  return [
    ...(workspaceEdit.changes?.[uri] ?? []),
    ...(workspaceEdit.documentChanges ?? []).filter((change) => change.textDocument?.uri === uri).flatMap((change) => change.edits),
  ];
}

module.exports = { applyEdits, editsOf, offsetAt, positionAt, rangeOf, textIn };
