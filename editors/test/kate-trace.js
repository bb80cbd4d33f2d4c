// Reads what kate-syntax-highlighter draws below each line of a file (its names stand in the columns where the pieces begin) and
// prints a line "NAME PIECE" for each piece. Usage: node kate-trace.js FILE < DRAWING
'use strict';
const fs = require('node:fs');

const source = fs.readFileSync(process.argv[2], 'utf8').replace(/\n$/, '').split('\n');
const drawn = fs.readFileSync(0, 'utf8').split('\n');
let at = 0;
for (let i = 0; i < source.length; i++) {
  if (drawn[at] !== source[i]) {
    throw new Error(`line ${i + 1} is not where it must be: '${drawn[at]}'`);
  }
  const names = [];
  for (at++; at < drawn.length && !(drawn[at] === source[i + 1] && names.length > 0); at++) {
    names.push(...[...drawn[at].matchAll(/[A-Z][a-z]+/g)].map((match) => ({ name: match[0], start: match.index })));
  }
  names.sort((a, b) => a.start - b.start);
  names.forEach(({ name, start }, index) => {
    const piece = source[i].slice(start, names[index + 1]?.start).trim();
    if (piece !== '') {
      console.log(`${name} ${piece}`);
    }
  });
}
