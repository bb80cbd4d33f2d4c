import { blocks } from './blocks.js';
import { ask } from './connection.js';
import { make, markScrollers } from './elements.js';
import { findingList } from './panels.js';
import { timers } from './timers.js';

// At which hold point a line of the record belongs, by its first word.
const holds = {
  kit: 'H2', used: 'H2', pot: 'H3', left: 'H4', 'wet-out': 'H4', vacuum: 'H5', rise: 'H5', pickup: 'H5', cure: 'H6', demould: 'H7', untrimmed: 'H8', mass: 'H8',
  thickness: 'H8', pinholes: 'H8', 'peel-ply': 'H8', defect: 'H8', cause: 'H8', action: 'H8', deviation: 'H8', disposition: 'H9',
};
const place = document.getElementById('bench');
let view = null;
let kept = null;
let data = null;
let running = null;
let at = 0;

// The part that is built here: another one may be chosen above while its readings are still being typed.
let building = null;

// The part that was chosen while a bench was open, until the desk has it.
let chosen = null;

let beginnings = 0;

const key = ({ file, part }) => `recipe-bench ${file} ${part}`;

function keep() {
  try {
    localStorage.setItem(key(building), JSON.stringify(kept));
  } catch {
    // A browser that keeps nothing still works until the page is closed.
  }
}

function remembered(of) {
  try {
    return JSON.parse(localStorage.getItem(key(of)));
  } catch {
    return null;
  }
}

async function open(on, now) {
  view = now;
  running?.end();
  running = null;
  place.hidden = !on;
  if (on) {
    await begin(false);
  }
}

/** Goes on with the build that was begun, or begins one. */
async function begin(anew) {
  if (!view?.part) {
    place.replaceChildren(make('p', {}, 'There is no part to build.'));
    return;
  }
  const mine = ++beginnings;
  const wanted = { file: view.file, part: view.part };
  try {
    const old = anew ? null : remembered(wanted);
    const answer = await ask(`bench?part=${encodeURIComponent(wanted.part)}${old ? `&serial=${old.serial}` : ''}`);
    if (mine !== beginnings) {
      return;
    }
    [building, data] = [wanted, answer];
    kept = old ?? { serial: data.serial, revision: data.revision, form: data.form, lines: data.lines, typed: {}, ticks: [], runs: {} };
    keep();
    at = Math.min(kept.at ?? 0, data.stations.length);
    draw();
  } catch (problem) {
    place.replaceChildren(make('p', { class: 'notice bad' }, problem.message));
  }
}

function draw() {
  running?.end();
  running = timers(data.pots, kept.runs, (pot, what) => {
    if (what === 'mixed') {
      fillTime(pot.number);
    }
    keep();
  });
  const body = make('div', { id: 'station' });
  const select = make('select', { 'aria-label': 'Station', change: () => go(select.selectedIndex) },
    ...data.stations.map((station) => make('option', {}, `${station.paper}: ${station.title}`)), make('option', {}, 'Readings: the whole record'));
  const earlier = make('button', { type: 'button', click: () => go(at - 1) }, 'Back');
  const next = make('button', { type: 'button', class: 'main', click: () => go(at + 1) }, 'Next station');
  place.replaceChildren(
    make('p', {}, make('strong', {}, `${data.label}, no ${kept.serial}`), `, revision ${kept.revision}`,
      kept.revision === data.revision ? '' : make('strong', {}, ` ▲ The recipe is now at ${data.revision}; the record goes on as it was begun.`)),
    running.list,
    make('div', { class: 'walk' }, earlier, select, next),
    body);

  function go(to) {
    at = Math.max(0, Math.min(data.stations.length, to));
    kept.at = at;
    keep();
    show();
    body.querySelector('h2').focus();
  }

  function show() {
    select.selectedIndex = at;
    earlier.disabled = at === 0;
    next.disabled = at === data.stations.length;
    const station = data.stations[at];
    body.replaceChildren(...(station ? stationPage(station) : recordPage()));
    markScrollers();
  }

  show();
}

function stationPage(station) {
  const own = kept.lines.filter((line) => belongs(line, station));
  const ticks = {
    has: (name) => kept.ticks.includes(`${station.title}: ${name}`),
    set(name, on) {
      kept.ticks = kept.ticks.filter((other) => other !== `${station.title}: ${name}`).concat(on ? [`${station.title}: ${name}`] : []);
      keep();
    },
  };
  return [make('h2', { tabindex: -1 }, station.title), ...blocks(station.blocks, ticks), own.length > 0 ? readings('Readings of this station', own) : ''].filter((item) => item !== '');
}

function belongs(line, station) {
  const [word, hold] = line.pieces[0].split(' ');
  return word === 'signed' ? station.holds.includes(hold) : holds[word] ? station.holds.includes(holds[word]) : station === data.stations[0];
}

function readings(title, lines) {
  return make('fieldset', { class: 'readings' }, make('legend', {}, title), ...lines.map(reading));
}

/** A line of the record with a field for each blank. */
function reading(line) {
  const parts = [];
  line.pieces.forEach((piece, i) => {
    if (piece) {
      parts.push(make('span', {}, piece));
    }
    if (i + 1 < line.pieces.length) {
      const name = line.pieces.slice(0, i + 1).filter(Boolean).join(', ');
      const input = make('input', { type: 'text', autocomplete: 'off', 'aria-label': `${name}${line.remark ? ` (${line.remark})` : ''}` });
      input.value = kept.typed[line.line]?.[i] ?? '';
      input.addEventListener('input', () => {
        typed(line)[i] = input.value;
        keep();
      });
      parts.push(input);
    }
  });
  return make('div', { class: 'reading' }, ...parts, line.remark ? make('span', { class: 'note' }, line.remark) : null);
}

const typed = (line) => kept.typed[line.line] ??= Array(line.pieces.length - 1).fill('');

/** The time of mixing goes into the record by itself, as long as nobody wrote another one. */
function fillTime(number) {
  const line = kept.lines.find((one) => one.pieces[0] === `pot ${number} resin`);
  const blank = line?.pieces.indexOf('mixed-at') ?? -1;
  if (line && blank > 0 && !typed(line)[blank]) {
    typed(line)[blank] = new Date().toTimeString().slice(0, 5);
    draw();
  }
}

function recordPage() {
  const text = make('textarea', { readonly: true, 'aria-label': 'The record as text', spellcheck: 'false' });
  const found = make('div', { role: 'status' });
  const file = make('input', { type: 'text', id: 'record-file', value: `${building.part}-${String(kept.serial).padStart(3, '0')}.recipe` });
  const filled = () => ({ form: kept.form, typed: kept.typed });
  const check = async () => {
    const answer = await ask('record', filled());
    text.value = answer.text;
    return answer;
  };
  const say = (...what) => found.replaceChildren(...what);
  const doing = (action) => async () => {
    try {
      await action();
    } catch (problem) {
      say(make('p', { class: 'notice bad' }, problem.message));
    }
  };
  const show = doing(async () => {
    const answer = await check();
    say(answer.findings.length === 0 ? make('p', {}, 'The checks have nothing to say of it.') : findingList(answer.findings));
  });
  const copy = doing(async () => {
    await check();
    await navigator.clipboard.writeText(text.value);
    say(make('p', {}, 'Copied.'));
  });
  const download = doing(async () => {
    await check();
    const url = URL.createObjectURL(new Blob([text.value], { type: 'text/plain;charset=utf-8' }));
    make('a', { href: url, download: file.value }).click();
    setTimeout(() => URL.revokeObjectURL(url), 10000);
  });
  const write = doing(async () => {
    await ask('record/write', { ...filled(), file: file.value });
    say(make('p', {}, `Written: ${file.value}, beside the recipe.`));
  });
  const anew = make('button', {
    type: 'button',
    click() {
      if (anew.dataset.sure) {
        void begin(true);
      } else {
        anew.dataset.sure = 'yes';
        anew.textContent = 'Yes: forget what was typed here';
      }
    },
  }, 'Begin another build');
  void show();
  return [
    make('h2', { tabindex: -1 }, 'Readings'),
    readings('The whole record', kept.lines),
    make('h3', {}, 'The record'),
    make('p', { class: 'fine' }, 'A draft of a build record. It is kept in this browser only until you copy, download or write it; a blank that is left stays a blank (__).'),
    text,
    make('div', { class: 'walk' },
      make('button', { type: 'button', click: show }, 'Show and check'), make('button', { type: 'button', click: copy }, 'Copy'), make('button', { type: 'button', click: download }, 'Download'),
      make('label', { for: 'record-file' }, 'File '), file, make('button', { type: 'button', class: 'main', click: write }, 'Write it beside the recipe')),
    found,
    make('div', { class: 'walk' }, anew),
  ];
}

/** The desk hears of each moment; here only the plan that is asked for next changes, unless another part was chosen. */
function look(now) {
  view = now;
  if (chosen !== null && now.part === chosen) {
    chosen = null;
    if (!place.hidden) {
      void begin(false);
    }
  }
}

/** Another part was chosen: its build is shown as soon as the desk has it. */
function turn(part) {
  chosen = part;
}

export const bench = { open, look, turn };
