import { blocks } from './blocks.js';
import { make, markScrollers } from './elements.js';

const drawn = new WeakMap();

/** Puts something into a place unless the same stands there already; whether it was another one. */
function put(place, what, build) {
  const text = JSON.stringify(what);
  if (drawn.get(place) === text) {
    return false;
  }
  const first = !drawn.has(place);
  drawn.set(place, text);
  place.replaceChildren(...build());
  return !first;
}

/** The figures at the head, each with what it was. */
export function figures(place, picture, against) {
  put(place, [picture.figures, against], () => picture.figures.map((figure) => make('div', { class: figure.alarm ? 'alarm' : null },
    make('dt', {}, figure.label),
    make('dd', {}, figure.value),
    figure.was ? make('dd', { class: 'difference' }, figure.difference ? `${figure.difference}, was ${figure.was}` : `was ${figure.was}`) : null)));
}

/** The panels with drawings; those that are another than before are marked for a while. */
export function pictures(place, picture, quietly) {
  const panels = picture.panels;
  for (const gone of [...place.children].filter((child) => !panels.some((panel) => panel.id === child.id))) {
    gone.remove();
  }
  panels.forEach((panel, i) => {
    let section = document.getElementById(panel.id);
    if (!section) {
      section = make('section', { class: 'panel', id: panel.id, 'aria-labelledby': `${panel.id}-title` }, make('h2', { id: `${panel.id}-title` }, panel.title),
        panel.folded ? make('details', { toggle: markScrollers }, make('summary', {}, 'Show them'), make('div', { class: 'body' })) : make('div', { class: 'body' }));
    }
    if (place.children[i] !== section) {
      place.insertBefore(section, place.children[i] ?? null);
    }
    if (put(section.querySelector('.body'), panel.blocks, () => blocks(panel.blocks)) && !quietly) {
      fresh(section);
    }
  });
}

function fresh(section) {
  section.classList.remove('fresh');
  section.querySelector('.fresh-mark')?.remove();
  void section.offsetWidth;
  section.classList.add('fresh');
  const mark = make('span', { class: 'fresh-mark' }, 'changed');
  section.querySelector('h2').append(mark);
  setTimeout(() => {
    if (mark.isConnected) {
      mark.remove();
      section.classList.remove('fresh');
    }
  }, 6000);
}

const marks = { error: '■ error', warning: '▲ warning', advice: '● advice' };

/** What was found, the worst first. */
export function findings(panel, view) {
  const list = view.findings;
  const count = (severity) => list.filter((finding) => finding.severity === severity).length;
  put(panel.querySelector('.body'), [list, view.unshown], () => list.length === 0
    ? [make('p', {}, view.state === 'gone' ? 'There is no text to look at.' : 'Nothing was found.')]
    : [findingList(list), view.unshown > 0 ? make('p', {}, `and ${view.unshown} more; \`recipe check\` lists them all.`) : '']);
  const title = panel.querySelector('h2');
  title.querySelector('.count')?.remove();
  if (list.length > 0) {
    const words = ['error', 'warning', 'advice'].map((severity) => [count(severity), severity]).filter(([n]) => n > 0);
    title.append(make('span', { class: 'count' }, words.map(([n, word]) => `${n} ${word}${n > 1 && word !== 'advice' ? 's' : ''}`).join(', ')));
  }
}

/** Findings as a list. */
export function findingList(list) {
  return make('ul', {}, list.map((finding) => make('li', { class: `finding ${finding.severity}` },
    make('p', { class: 'what' }, make('span', { class: 'severity' }, `${marks[finding.severity]} `), `${finding.code} ${finding.name}: ${finding.message}`),
    finding.text ? make('code', {}, `${finding.in ? `${finding.in}, ` : ''}line ${finding.line}: ${finding.text}`) : null,
    make('p', { class: 'fine' }, finding.why),
    finding.fixes.map((fix) => make('p', { class: 'fine' }, make('strong', {}, 'Fix: '), fix)))));
}

/** What is another than at the last commit. */
export function changes(panel, view) {
  const about = view.picture?.changes;
  const broken = view.state === 'broken';
  const late = broken && about && !about.refusal ? [make('p', { class: 'notice' }, 'The text as it stands cannot be understood and is not compared. This is the text as it last could be.')] : [];
  put(panel.querySelector('.body'), [broken, about ?? null], () => !about
    ? [make('p', {}, broken ? 'The text cannot be understood, so there is nothing to compare.' : 'There is nothing to compare yet.')]
    : about.refusal ? [make('p', {}, about.refusal)]
      : [...late, ...(about.blocks.length === 0 ? [make('p', {}, `Nothing ${broken ? 'was' : 'is'} different from ${about.against}.`)] : blocks(about.blocks))]);
}

/** Says to who cannot see it what a change did. */
export function said(place, before, view) {
  const count = `${view.findings.length} finding${view.findings.length === 1 ? '' : 's'}`;
  const was = new Map(before.picture.figures.map((figure) => [figure.label, figure.value]));
  const moved = view.picture.figures.filter((figure) => was.has(figure.label) && was.get(figure.label) !== figure.value)
    .map((figure) => `${figure.label} ${was.get(figure.label)}, now ${figure.value}`);
  const found = view.findings.length === before.findings.length ? [] : [count];
  place.textContent = view.state === 'broken' ? `The text cannot be understood, ${count}.`
    : view.state === 'gone' ? 'The file is not there.'
      : `Redrawn. ${[...moved, ...found].join('. ')}`;
}
