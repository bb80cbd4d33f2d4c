import { make } from './elements.js';

// A pot's state has a colour, a shape, a word and a sound of its own: gloves, glare and noise each take one of them away.
const shapes = {
  idle: 'M8 8h16v16H8z M11 11v10h10V11z',
  fresh: 'M16 4a12 12 0 1 0 0.01 0z',
  late: 'M16 3 L30 28 H2 Z',
  dead: 'M10 3h12l7 7v12l-7 7H10l-7-7V10z',
};
const words = { idle: 'not mixed yet', fresh: 'use it', late: 'HURRY: a quarter is left', dead: 'DEAD: put it outside', done: 'used up' };
const sounds = { fresh: [[660, 0.12]], late: [[880, 0.2], [880, 0.2]], dead: [[440, 0.45], [330, 0.45], [440, 0.45]] };
let audio = null;

/** Short tones; nothing where the browser lets no sound out. */
function play(name) {
  try {
    audio ??= new AudioContext();
    void audio.resume();
    let at = audio.currentTime + 0.02;
    for (const [pitch, length] of sounds[name]) {
      const tone = audio.createOscillator();
      const loud = audio.createGain();
      tone.frequency.value = pitch;
      loud.gain.setValueAtTime(0.25, at);
      loud.gain.setTargetAtTime(0, at + length, 0.03);
      tone.connect(loud).connect(audio.destination);
      tone.start(at);
      tone.stop(at + length + 0.2);
      at += length + 0.12;
    }
  } catch {
    // The shape and the word are there all the same.
  }
}

/** How a pot stands so many seconds after it was mixed. */
export function standing(pot, run, now) {
  if (!run) {
    return { state: 'idle', left: pot.life_s ?? null };
  }
  const left = pot.life_s === undefined ? null : pot.life_s - Math.floor(((run.used ?? now) - run.mixed) / 1000);
  const state = run.used ? 'done' : left === null || left > pot.life_s / 4 ? 'fresh' : left > 0 ? 'late' : 'dead';
  return { state, left };
}

export const clock = (seconds) => {
  const size = Math.abs(seconds);
  return `${seconds < 0 ? '-' : ''}${Math.floor(size / 60)}:${String(size % 60).padStart(2, '0')}`;
};

/** The pots of a build with a timer each. `runs` is kept by the caller, by name of the pot. */
export function timers(pots, runs, changed) {
  const list = make('ul', { class: 'pots', 'aria-label': 'Pots' });
  const rows = pots.map((pot) => {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    const icon = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    icon.setAttribute('viewBox', '0 0 32 32');
    icon.setAttribute('aria-hidden', 'true');
    icon.append(path);
    const left = make('p', { class: 'left', role: 'timer', 'aria-label': `${pot.name}, time left` });
    const word = make('p', { class: 'word', 'aria-live': 'polite' });
    const start = make('button', { type: 'button', class: 'main', click: () => press(pot, 'mixed') }, `${pot.name} mixed now`);
    const used = make('button', { type: 'button', click: () => press(pot, 'used') }, 'Used up');
    const reset = make('button', { type: 'button', click: () => press(pot, 'reset') }, 'Not yet mixed');
    const row = make('li', { class: 'pot' }, icon,
      make('div', {}, make('strong', {}, pot.name), ` ${pot.amount}, ${pot.use}`, pot.life_s === undefined ? ': nobody knows its life' : ''),
      make('div', {}, left, word), make('div', { class: 'do' }, start, used, reset));
    list.append(row);
    return { pot, row, path, left, word, start, used, reset, state: null };
  });

  function press(pot, what) {
    const run = runs[pot.name];
    if (what === 'mixed') {
      runs[pot.name] = { mixed: Date.now() };
      play('fresh');
    } else if (what === 'used' && run) {
      run.used = Date.now();
    } else {
      delete runs[pot.name];
    }
    changed(pot, what);
    draw();
  }

  function draw() {
    for (const row of rows) {
      const run = runs[row.pot.name];
      const { state, left } = standing(row.pot, run, Date.now());
      row.left.textContent = left === null ? '' : clock(left);
      row.start.hidden = Boolean(run);
      row.used.hidden = !run || Boolean(run.used);
      row.reset.hidden = !run;
      if (row.state !== state) {
        if (row.state !== null && (state === 'late' || state === 'dead')) {
          play(state);
        }
        row.state = state;
        row.path.setAttribute('d', shapes[state] ?? shapes.idle);
        row.word.textContent = words[state];
        row.row.className = `pot ${state === 'fresh' ? 'fresh-pot' : state}`;
      }
    }
  }

  draw();
  const ticking = setInterval(draw, 250);
  return { list, end: () => clearInterval(ticking) };
}
