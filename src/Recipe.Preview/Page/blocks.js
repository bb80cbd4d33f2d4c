import { figure, make } from './elements.js';

/** Draws blocks of a paper. `ticks` keeps what was ticked, where boxes can be. */
export function blocks(list, ticks) {
  return list.map((block) => (kinds[block.kind] ?? unknown)(block, ticks));
}

const unknown = (block) => make('p', { class: 'fine' }, block.text ?? '');

/** Runs of text, each as it stands out. */
function phrase(runs = []) {
  return runs.map((run) => run.style === 'strong' ? make('strong', {}, run.text) : run.style === 'code' ? make('code', {}, run.text) : run.text);
}

const plain = (runs = []) => runs.map((run) => run.text).join('');

/** A box to tick. */
function tick(ticks, name, ...label) {
  const box = make('input', { type: 'checkbox', 'aria-label': name });
  if (ticks) {
    box.checked = ticks.has(name);
    box.addEventListener('change', () => ticks.set(name, box.checked));
  }
  return make('label', { class: 'tick' }, box, make('span', {}, ...label));
}

const kinds = {
  heading: (block) => make('h3', {}, block.text),
  paragraph: (block) => make('p', { class: block.fine ? 'fine' : null }, phrase(block.text)),
  facts: (block) => make('dl', { class: 'facts' }, block.items.flatMap((item) => [make('dt', {}, item.label ?? ''), make('dd', {}, phrase(item.value))])),
  numbers: (block) => make('div', { class: 'numbers' },
    make('p', {}, block.caption ?? ''),
    make('dl', {}, block.items.map((item) => make('div', { class: item.alarm ? 'alarm' : null },
      make('dt', {}, item.label ?? ''),
      make('dd', {}, `${item.alarm ? '▲ ' : ''}${item.value ?? ''}`),
      item.note ? make('dd', { class: 'note' }, item.note) : null)))),
  hold: (block, ticks) => make('div', { class: 'box hold' },
    make('p', {}, make('strong', {}, `● ${block.id} HOLD: ${block.title ?? ''}`)),
    make('ul', { class: 'ticks' }, block.checks.map((check, i) => make('li', {}, tick(ticks, `${block.id}, ${i + 1}: ${plain(check.text)}`, phrase(check.text)))))),
  caution: (block) => make('div', { class: 'box' },
    make('p', {}, make('strong', {}, `▲ ${block.title ?? ''}`)), make('ul', {}, block.lines.map((line) => make('li', {}, phrase(line.text))))),
  ifs: (block) => make('div', { class: 'box' },
    make('p', {}, make('strong', {}, 'If it goes wrong')),
    make('ul', {}, block.lines.map((line) => make('li', {}, make('strong', {}, `${line.if}: `), line.then ?? '')))),
  bullets: (block) => make('ul', { class: block.fine ? 'bullets fine' : 'bullets' }, block.items.map((item) => make('li', {}, phrase(item.text)))),
  ticks: (block, ticks) => make('ul', { class: 'ticks' }, block.items.map((item) => make('li', {}, tick(ticks, plain(item.text), phrase(item.text))))),
  drawing: (block) => figure(block),
  table,
};

function table(block, ticks) {
  const columns = block.columns;
  const head = make('thead', {}, make('tr', {}, columns.map((column) => make('th', { scope: 'col', class: side(column) }, column.title))));
  const body = make('tbody', {}, block.rows.map((row) => row.group
    ? make('tr', { class: 'group' }, make('th', { colspan: columns.length, scope: 'colgroup' }, phrase(row.group)))
    : make('tr', { class: row.sum ? 'sum' : null }, row.cells.map((cell, i) => make(columns[i].names ? 'th' : 'td', { scope: columns[i].names ? 'row' : null, class: side(columns[i]) }, inside(cell, row, ticks))))));
  return make('div', { class: 'scroll', role: 'group', 'aria-label': block.caption || columns.map((column) => column.title).join(', ') },
    make('table', {}, block.caption ? make('caption', {}, block.caption) : null, head, body));
}

const side = (column) => column.align === 'left' ? null : column.align;

function inside(cell, row, ticks) {
  const note = cell.note ? make('span', { class: 'note' }, cell.note) : null;
  if (cell.ring) {
    return make('span', { class: 'ring' }, cell.ring);
  }
  if (cell.big) {
    return [make('span', { class: 'big' }, cell.big), note];
  }
  if (cell.ticks) {
    const about = row.cells.map((other) => typeof other.text === 'string' ? other.text : plain(other.text) || other.big || other.ring || '').filter(Boolean).join(', ');
    return cell.ticks.map((word, i) => tick(ticks, `${about}${word ? `, ${word}` : ''}${cell.ticks.length > 1 ? `, ${i + 1}` : ''}`, word));
  }
  return [typeof cell.text === 'string' ? cell.text : phrase(cell.text), note];
}
