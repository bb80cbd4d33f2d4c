// Makes elements. Text goes in as text: nothing here reads markup but drawing(), which parses what our own writer made.

/** An element with attributes and children; strings become text, functions listeners. */
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      element.addEventListener(name, value);
    } else if (value === true) {
      element.setAttribute(name, '');
    } else if (value !== false && value !== null && value !== undefined) {
      element.setAttribute(name, String(value));
    }
  }
  element.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== ''));
  return element;
}

const policy = window.trustedTypes?.createPolicy('recipe-drawings', { createHTML: (svg) => svg });
let drawings = 0;

/** A drawing, parsed as SVG; null when it is none. Its patterns get names of their own, for several drawings may use the same. */
function drawing(svg) {
  const root = new DOMParser().parseFromString(policy ? policy.createHTML(svg) : svg, 'image/svg+xml').documentElement;
  if (root.nodeName !== 'svg') {
    return null;
  }
  const mine = `-${++drawings}`;
  for (const named of root.querySelectorAll('[id]')) {
    named.id += mine;
  }
  for (const filled of root.querySelectorAll('[fill^="url(#"]')) {
    filled.setAttribute('fill', filled.getAttribute('fill').replace(')', `${mine})`));
  }
  root.removeAttribute('width');
  root.removeAttribute('height');
  return document.adoptNode(root);
}

/** A drawing with its caption; it can be looked at in full size. */
export function figure(block) {
  const picture = drawing(block.svg);
  const button = make('button', { type: 'button', 'aria-pressed': 'false', 'aria-label': `Enlarge: ${block.title}` }, 'Enlarge');
  const whole = make('figure', { 'data-name': block.name },
    make('div', { class: 'scroll', role: 'group', 'aria-label': block.title }, picture ?? block.description ?? ''),
    make('figcaption', {}, make('span', {}, block.title), button));
  button.addEventListener('click', () => {
    button.setAttribute('aria-pressed', String(whole.classList.toggle('large')));
    markScrollers();
  });
  return whole;
}

/** What can be scrolled sideways can be reached by the keyboard. */
export function markScrollers() {
  for (const box of document.querySelectorAll('.scroll, .diff')) {
    if (box.scrollWidth > box.clientWidth + 1) {
      box.tabIndex = 0;
    } else {
      box.removeAttribute('tabindex');
    }
  }
}

addEventListener('resize', markScrollers);
