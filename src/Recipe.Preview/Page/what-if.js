import { make, markScrollers } from './elements.js';
import { findingList } from './panels.js';

/** Levers on the numbers that the recipe declares: what they would do, and the lines that would say so. Nothing is written before somebody says so. */
export function whatIf(panel, { ask, tried }) {
  const body = panel.querySelector('.body');
  const moved = new Map();
  let view = null;
  let known = '';
  let rows = [];
  let timer = 0;
  let round = 0;
  let trial = null;
  let writing = false;

  // Why nothing was written. It stays until a lever is moved: the change of the file that was in the way redraws the page a moment later.
  let trouble = null;

  const result = make('div', { class: 'result' });

  function take(next) {
    view = next;
    const levers = view.picture.levers;
    const now = JSON.stringify([view.part, levers.map(({ value, ...lever }) => lever)]);
    if (now !== known) {
      known = now;
      rows = levers.map(row);
      body.replaceChildren(
        make('p', { class: 'fine' }, levers.length > 0
          ? 'Try another number. The pictures show what it would do; the file stays as it is until you write it.'
          : 'The recipe declares no number here that could be moved: repeats of a ply, room, laminators, resin content.'),
        ...rows.map((one) => one.line), result);
    }
    for (const id of [...moved.keys()].filter((key) => !levers.some((lever) => lever.id === key && lever.value !== moved.get(key)))) {
      moved.delete(id);
    }
    rows.forEach((one, i) => one.stand(levers[i].value));
    if (moved.size > 0) {
      later();
    } else {
      settle(null);
    }
  }

  /** A lever. Whoever holds it keeps it while the file changes under it. */
  function row(lever) {
    const id = `lever-${lever.id}`;
    let declared = lever.value;
    const output = make('output', { for: id });
    const input = make('input', { type: 'range', id, min: lever.low, max: lever.high, step: lever.step });
    const line = make('div', { class: 'lever' }, make('label', { for: id }, lever.label), output, input);
    const said = (value) => `${value}${lever.unit ? ` ${lever.unit}` : ''}`;
    const draw = () => {
      const value = Number(input.value);
      output.textContent = value === declared ? said(value) : `${said(declared)} → ${said(value)}`;
      input.setAttribute('aria-valuetext', said(value));
      line.classList.toggle('moved', value !== declared);
    };
    input.addEventListener('input', () => {
      const value = Number(input.value);
      forget();
      if (value === declared) {
        moved.delete(lever.id);
      } else {
        moved.set(lever.id, value);
      }
      draw();
      later();
    });
    return {
      line,
      stand(value) {
        declared = value;
        input.value = moved.get(lever.id) ?? value;
        draw();
      },
    };
  }

  function later() {
    clearTimeout(timer);
    timer = setTimeout(run, 60);
  }

  async function run() {
    const mine = ++round;
    if (moved.size === 0 || view.state !== 'sound') {
      settle(null);
      return;
    }
    try {
      const answer = await ask('trial', { part: view.part, values: Object.fromEntries(moved) });
      if (mine === round) {
        settle(answer);
      }
    } catch (problem) {
      if (mine === round) {
        settle(null);
        result.replaceChildren(make('p', { class: 'notice bad' }, problem.message));
      }
    }
  }

  function settle(answer) {
    if (answer === null) {
      ++round;
    }
    const was = trial;
    trial = answer;
    result.replaceChildren(...(trouble ? [trouble] : []), ...(answer ? outcome(answer) : []));
    if (was !== null || answer !== null) {
      tried(answer);
    }
    markScrollers();
  }

  function outcome(answer) {
    const old = new Set(view.findings.map((finding) => `${finding.code} ${finding.message}`));
    const fresh = answer.findings.filter((finding) => !old.has(`${finding.code} ${finding.message}`));
    return [
      make('p', {}, make('strong', {}, 'The text would change so:')),
      make('pre', { class: 'diff', 'aria-label': 'Lines that would change', role: 'group' }, answer.diff.map((line) => make('span', { class: kind(line) }, `${line}\n`))),
      fresh.length > 0 ? make('p', {}, make('strong', {}, 'It would earn:')) : '',
      fresh.length > 0 ? findingList(fresh) : '',
      ...buttons(),
    ].filter((item) => item !== '');
  }

  function buttons() {
    return [
      make('button', { type: 'button', class: 'main', click: write }, `Write this into ${view.file.split('/').at(-1)}`), ' ',
      make('button', { type: 'button', click: clear }, 'Put back'),
    ];
  }

  /** Writes what is tried. The trial is put away when it stands in the file and not before; what was not written is still there to be written. */
  async function write() {
    if (writing) {
      return;
    }
    writing = true;
    const { part, stamp } = view;
    const sent = new Map(moved);
    try {
      await ask('apply', { part, stamp, values: Object.fromEntries(sent) });
      putAway(part, sent);
    } catch (problem) {
      trouble = make('p', { class: 'notice bad', role: 'alert' }, problem.message);
      result.replaceChildren(trouble, ...(trial ? outcome(trial) : []));
    } finally {
      writing = false;
    }
  }

  // A lever that was moved on meanwhile, or one of another part, is another trial.
  function putAway(part, written) {
    if (view.part !== part) {
      return;
    }
    for (const [id, value] of written) {
      if (moved.get(id) === value) {
        moved.delete(id);
      }
    }
    if (moved.size === 0) {
      clear();
    } else {
      later();
    }
  }

  function forget() {
    trouble?.remove();
    trouble = null;
  }

  function clear() {
    moved.clear();
    forget();
    clearTimeout(timer);
    settle(null);
    if (view?.picture) {
      take(view);
    }
  }

  /** What stands over the pictures while they show a trial. */
  function notice() {
    return make('div', { class: 'notice' }, 'The figures and pictures show a trial. Nothing is written.', ...buttons());
  }

  return { take, clear, notice };
}

const kind = (line) => line.startsWith('@@') ? 'head' : line.startsWith('+') ? 'plus' : line.startsWith('-') ? 'minus' : null;
