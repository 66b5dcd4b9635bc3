// Feed and export: sliders that ask the server, and the picture of flows.
// d3-sankey is a script that hangs itself on the window's d3; it needs the two before it.
import './internmap.js';
import './d3-array.js';
import './d3-sankey.js';

const SVG = 'http://www.w3.org/2000/svg';
const PAUSE_MS = 160;
const NARROW = 560;

/** An SVG element with its attributes; the pages allow no inline style, so looks are classes. */
function draw(parent, name, attributes, words) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  if (words) element.textContent = words;
  parent.append(element);
  return element;
}

/** The room one row of words takes, by how many ends stand over one another. */
function heightOf(data, narrow) {
  const ends = data.nodes.filter((node) => node.kind === 'out' || node.kind === 'stays').length;
  return Math.max(narrow ? 420 : 340, ends * (narrow ? 50 : 44));
}

/** Lays words beside their nodes, the largest first; where they would cover others they go under the node, else away. */
function label(svg, nodes, narrow, edge, last) {
  const taken = [];
  const free = (box) => taken.every((other) => box.x > other.x + other.width || other.x > box.x + box.width
    || box.y > other.y + other.height || other.y > box.y + box.height);
  const isEnd = (node) => node.x0 >= last - 1;
  const inOrder = [...nodes].sort((a, b) => isEnd(b) - isEnd(a) || b.value - a.value);
  for (const node of inOrder) {
    const left = isEnd(node), inner = !left && node.x0 > edge + 1;
    const x = left ? (narrow ? node.x0 - 6 : node.x1 + 8) : inner ? (node.x0 + node.x1) / 2 : node.x1 + 6;
    const anchor = left && narrow ? 'end' : inner ? 'middle' : 'start';
    const places = inner ? [node.y0 - (narrow ? 18 : 6), node.y1 + 15] : [(node.y0 + node.y1) / 2 - (narrow ? 3 : -4)];
    for (const y of places) {
      const words = draw(svg, 'text', { class: 'halo flow-words', x, y, 'text-anchor': anchor });
      draw(words, 'tspan', {}, node.words);
      draw(words, 'tspan', narrow ? { class: 'flow-told', x, dy: 14 } : { class: 'flow-told', dx: 6 }, node.told);
      const box = words.getBBox();
      if (!inner || free(box)) { taken.push(box); break; }
      words.remove();
    }
  }
}

/** Room for the ends' words at the right, as wide as the widest of them. */
function widest(svg, data) {
  let room = 0;
  for (const node of data.nodes.filter(({ kind }) => kind === 'out' || kind === 'stays')) {
    const words = draw(svg, 'text', { class: 'flow-words' }, `${node.words}  ${node.told}`);
    room = Math.max(room, words.getComputedTextLength());
    words.remove();
  }
  return room + 28;
}

function picture(main) {
  const place = main.querySelector('[data-flows]'), json = main.querySelector('[data-flows-json]');
  if (!place || !json) return;
  const data = JSON.parse(json.textContent), width = place.clientWidth;
  place.replaceChildren();
  if (!data.flows.length || width < 50) return;
  const narrow = width < NARROW, height = heightOf(data, narrow), edge = narrow ? 12 : 16;
  const svg = draw(place, 'svg', { width, height, viewBox: `0 0 ${width} ${height}`, 'aria-hidden': 'true' });
  const { sankey } = window.d3;
  const graph = sankey()
    .nodeId((node) => node.id)
    .nodeAlign((node, columns) => (node.kind === 'out' || node.kind === 'stays' ? columns - 1 : node.kind === 'source' ? 0 : node.depth))
    .nodeWidth(narrow ? 6 : 8)
    .nodePadding(narrow ? 30 : 26)
    .extent([[edge, narrow ? 34 : 22], [width - (narrow ? edge : widest(svg, data)), height - 18]])({
      nodes: data.nodes.map((node) => ({ ...node })),
      links: data.flows.map((flow) => ({ source: flow.from, target: flow.to, value: flow.g_per_d, told: flow.told })),
    });
  for (const link of graph.links) {
    const from = link.source.x1, to = link.target.x0, middle = (from + to) / 2;
    const wet = link.source.id === 'water' || link.target.id === 'water';
    const path = draw(svg, 'path', {
      class: `flow-way ${wet ? 'wet' : 'dry'}`,
      d: `M${from},${link.y0}C${middle},${link.y0} ${middle},${link.y1} ${to},${link.y1}`,
      'stroke-width': Math.max(1, link.width),
    });
    draw(path, 'title', {}, `${link.source.words} to ${link.target.words}: ${link.told}`);
  }
  for (const node of graph.nodes) {
    draw(svg, 'rect', {
      class: `flow-node ${node.kind}${node.id === 'water' ? ' is-water' : ''}`,
      x: node.x0, y: node.y0, width: node.x1 - node.x0, height: Math.max(1.5, node.y1 - node.y0),
    });
  }
  label(svg, graph.nodes, narrow, edge, Math.max(...graph.nodes.map((node) => node.x0)));
}

export function start(main) {
  const form = main.querySelector('[data-handles]');
  let timer = 0, asked = 0, last = new URL(location.href).searchParams.toString();

  const tell = (input) => {
    const value = `${+(+input.value).toFixed(2)}\u00a0${input.dataset.symbol}`;
    const moved = input.value !== input.dataset.planned;
    input.closest('[data-handle]').querySelector('[data-told]').textContent = value;
    input.closest('[data-handle]').classList.toggle('moved', moved);
    input.setAttribute('aria-valuetext', `${value}${moved ? `, the plan has ${input.dataset.planned}` : ', as planned'}`);
  };
  for (const input of form.querySelectorAll('input[type="number"]')) {
    const { value } = input;
    // With a script every number is a slider; its steps hold the plan's own value.
    input.type = 'range';
    input.step = input.dataset.step;
    input.value = value;
    tell(input);
  }
  // The picture tells it; without a script the table stands open.
  main.querySelector('#flows-table')?.removeAttribute('open');

  function take(page) {
    for (const part of main.querySelectorAll('[data-part]')) {
      const fresh = page.getElementById(part.id);
      if (!fresh || fresh.innerHTML === part.innerHTML) continue;
      for (const details of part.querySelectorAll('details[id]')) {
        fresh.querySelector(`#${details.id}`)?.toggleAttribute('open', details.open);
      }
      part.replaceChildren(...fresh.childNodes);
    }
    const units = document.querySelectorAll('.units a');
    page.querySelectorAll('.units a').forEach((link, i) => { units[i].href = link.getAttribute('href'); });
    picture(main);
  }

  /** Only what was moved, so that an address to keep is short. */
  function query() {
    const kept = new URLSearchParams();
    for (const input of form.querySelectorAll('input[type="range"]')) {
      if (input.value !== input.dataset.planned) kept.append(input.name, input.value);
    }
    if (form.elements.show.value !== 'nitrogen') kept.append('show', form.elements.show.value);
    return kept;
  }

  async function ask() {
    clearTimeout(timer);
    const address = new URL(form.action);
    address.search = query();
    if (address.searchParams.toString() === last) return;
    last = address.searchParams.toString();
    const mine = ++asked, results = main.querySelector('#results');
    results.setAttribute('aria-busy', 'true');
    try {
      const answer = await fetch(address, { headers: { Accept: 'text/html' } });
      if (!answer.ok) throw new Error(answer.status);
      const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
      if (mine !== asked) return;
      history.replaceState(null, '', address.pathname + address.search);
      take(page);
    } catch {
      if (mine !== asked) return;
      last = '';
      main.querySelector('#lead').textContent = 'Not worked out just now: the program does not answer. What you moved stays here.';
    } finally {
      if (mine === asked) results.removeAttribute('aria-busy');
    }
  }

  form.addEventListener('input', (event) => {
    if (event.target.type === 'range') tell(event.target);
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE_MS);
  });
  form.addEventListener('submit', (event) => { event.preventDefault(); ask(); });
  main.querySelector('#back-to-plan').addEventListener('click', (event) => {
    event.preventDefault();
    for (const input of form.querySelectorAll('input[type="range"]')) {
      input.value = input.dataset.planned;
      tell(input);
    }
    ask();
  });

  const place = main.querySelector('.bench');
  let width = 0;
  new ResizeObserver(() => {
    const now = main.querySelector('[data-flows]')?.clientWidth ?? 0;
    if (now !== width) { width = now; picture(main); }
  }).observe(place);
}
