// Starts what a page needs, and closes the system picker when one looks elsewhere.
import { asking } from './asking.js';
import { start as build } from './build.js';
import { start as corals } from './corals.js';
import { start as editor } from './editor.js';
import { start as mixing } from './mixing.js';
import { start as imported } from './import.js';
import { start as nutrients } from './feed-and-export.js';
import { start as rehearse } from './rehearse.js';
import { start as shop } from './shop.js';
import { start as today } from './today.js';
import { start as water } from './water.js';
import { start as waterDesk } from './water-desk.js';

const pages = {
  build,
  corals,
  'new-tank': asking,
  day: asking,
  solutions: asking,
  ph: asking,
  'feed-and-export': nutrients,
  mixing,
  log: imported,
  rehearse,
  shop,
  plan: editor,
  today,
  water,
  'water-desk': waterDesk,
};

/** Takes over the middle of a page the server answered with, and keeps focus where it was. */
function replaced(page) {
  const main = document.querySelector('main'), fresh = page.querySelector('main');
  const focused = document.activeElement?.id;
  for (const details of main.querySelectorAll('details[id][open]')) page.getElementById(details.id)?.setAttribute('open', '');
  document.title = page.title;
  main.replaceChildren(...fresh.childNodes);
  main.removeAttribute('aria-busy');
  begin(main);
  if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
}

function begin(main) {
  pages[main.dataset.page]?.(main, replaced);
}

const main = document.querySelector('main');
begin(main);

const picker = document.querySelector('.water-pick');
if (picker) {
  document.addEventListener('click', (event) => { if (!picker.contains(event.target)) picker.open = false; });
  picker.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') { picker.open = false; picker.querySelector('summary').focus(); }
  });
}
