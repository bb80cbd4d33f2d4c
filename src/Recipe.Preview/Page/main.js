import { bench } from './bench.js';
import { ask, follow } from './connection.js';
import { make, markScrollers } from './elements.js';
import { changes, figures, findings, pictures, said } from './panels.js';
import { whatIf } from './what-if.js';

const by = (id) => document.getElementById(id);
const state = { part: new URLSearchParams(location.hash.slice(1)).get('part'), view: null, lost: false, trial: null };
let asking = false;
let again = false;

/** Fetches the moment and draws it. However many changes come meanwhile, the last one is what is shown. */
async function refresh() {
  if (asking) {
    again = true;
    return;
  }
  asking = true;
  try {
    do {
      again = false;
      show(await ask(`view${state.part ? `?part=${encodeURIComponent(state.part)}` : ''}`));
    } while (again);
  } catch (problem) {
    notices(problem.message);
  } finally {
    asking = false;
  }
}

function show(view) {
  const before = state.view;
  state.view = view;
  document.title = `${view.picture?.label ?? view.file} - Recipe preview`;
  by('title').textContent = view.picture?.label ?? view.file;
  by('file').textContent = view.picture ? `${view.file}, ${view.picture.name}, revision ${view.picture.revision}` : view.file;
  parts(view);
  findings(by('findings'), view);
  changes(by('changes'), view);
  if (view.picture) {
    moves.take(view);
  }
  redraw();
  if (before?.picture && view.picture && before.stamp !== view.stamp) {
    said(by('said'), before, view);
  }
  bench.look(view);
  document.body.dataset.stamp = view.stamp;
}

/** Draws figures and pictures: of the file, or of what is being tried. */
function redraw() {
  const shown = state.trial?.picture ?? state.view?.picture;
  const isOld = state.view?.state !== 'sound';
  by('desk').classList.toggle('old', isOld);
  if (shown) {
    figures(by('figures'), shown, state.trial ? 'the file as it stands' : shown.changes.against);
    pictures(by('pictures'), shown, state.trial !== null || isOld);
  }
  navigation();
  notices();
  markScrollers();
}

function parts(view) {
  const select = by('part');
  by('part-label').hidden = view.parts.length < 2;
  const known = view.parts.map((part) => `${part.name}\n${part.label}`).join('\n');
  if (select.dataset.known !== known) {
    select.dataset.known = known;
    select.replaceChildren(...view.parts.map((part) => make('option', { value: part.name }, part.label)));
  }
  if (view.part) {
    select.value = view.part;
  }
}

function navigation() {
  const panels = [...document.querySelectorAll('#desk .panel')].map((panel) => [panel.id, panel.querySelector('h2').firstChild.textContent]);
  const list = by('nav').querySelector('ul');
  const known = panels.join();
  if (list.dataset.known !== known) {
    list.dataset.known = known;
    list.replaceChildren(...panels.map(([id, title]) => make('li', {}, make('a', { href: `#${id}`, click: (event) => jump(event, id) }, title))));
  }
}

function jump(event, id) {
  event.preventDefault();
  const panel = by(id);
  panel.tabIndex = -1;
  panel.focus({ preventScroll: true });
  panel.scrollIntoView({ block: 'start' });
}

/** What somebody must know before believing the pictures. */
function notices(problem) {
  const view = state.view;
  const list = [];
  if (state.lost) {
    list.push(make('p', { class: 'notice bad' }, 'The preview does not answer: `recipe preview` has ended. What you see is old. Start it again; this page goes on by itself.'));
  }
  if (problem) {
    list.push(make('p', { class: 'notice bad' }, problem));
  }
  if (view?.trouble) {
    list.push(make('p', { class: 'notice bad' }, view.trouble));
  }
  if (view?.state === 'broken') {
    list.push(make('p', { class: 'notice bad' }, view.picture
      ? 'The text cannot be understood just now; the findings say where. The pictures are old: they show the last text that could.'
      : 'The text cannot be understood just now; the findings say where. There are no pictures yet.'));
  }
  if (view?.state === 'sound' && !view.picture) {
    list.push(make('p', { class: 'notice' }, 'There is no part in this file.'));
  }
  if (state.trial) {
    list.push(moves.notice());
  }
  const text = list.map((item) => item.textContent).join('\n');
  if (by('notices').dataset.text !== text) {
    by('notices').dataset.text = text;
    by('notices').replaceChildren(...list);
  }
}

const moves = whatIf(by('what-if'), {
  ask,
  tried(trial) {
    state.trial = trial;
    redraw();
  },
});

by('part').addEventListener('change', (event) => {
  state.part = event.target.value;
  history.replaceState(null, '', `#part=${encodeURIComponent(state.part)}`);
  moves.clear();
  bench.turn(state.part);
  refresh();
});
by('print-button').addEventListener('click', () => print());
by('bench-button').addEventListener('click', (event) => {
  const on = event.currentTarget.getAttribute('aria-pressed') !== 'true';
  event.currentTarget.setAttribute('aria-pressed', String(on));
  by('desk').hidden = on;
  by('nav').hidden = on;
  bench.open(on, state.view);
  if (!on) {
    markScrollers();
  }
});

follow({
  changed: refresh,
  lost() {
    state.lost = true;
    by('link').textContent = 'no answer';
    by('link').classList.add('lost');
    notices();
  },
  back() {
    state.lost = false;
    by('link').textContent = 'live';
    by('link').classList.remove('lost');
    notices();
  },
});
