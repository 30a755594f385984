// The search page's own client over the index in `pagefind/`. Everything else on the site
// works without a script; where this one cannot run, the lists below the form stay.
(() => {
  const box = document.querySelector(".search");
  const form = box?.querySelector("form");
  const count = box?.querySelector(".count");
  const list = box?.querySelector(".results");
  const more = box?.querySelector(".more");
  if (!box || !form || !count || !list || !more) return;

  const root = new URL(box.dataset.root || "./", location.href);
  const names = ["sheet", "assembly", "month", "kind", "finding"];
  const shownAtOnce = 10;
  let index;
  let found = [];
  let shown = 0;
  let turn = 0;

  const element = (name, text, attributes = {}) => {
    const made = document.createElement(name);
    made.append(text);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    return made;
  };

  // The index marks words with <mark> in escaped text; everything else stays text.
  const plain = (escaped) => {
    const decoder = document.createElement("textarea");
    decoder.innerHTML = escaped;
    return decoder.value;
  };
  const marked = (html) => {
    const line = element("p", "");
    for (const part of html.split(/(<mark>.*?<\/mark>)/)) {
      const word = part.match(/^<mark>(.*)<\/mark>$/);
      line.append(word ? element("mark", plain(word[1])) : plain(part));
    }
    return line;
  };

  const result = ({ url, meta, excerpt }) => {
    const item = document.createElement("li");
    const words = element("div", "");
    const heading = element("h2", "");
    heading.append(element("a", meta.title, { href: new URL(url.replace(/^\//, ""), root).href }));
    words.append(heading);
    if (meta.date) words.append(element("small", meta.date));
    words.append(marked(excerpt));
    item.append(words);
    if (meta.image) {
      const image = element("img", "", {
        src: new URL(meta.image, root).href,
        alt: meta.image_alt || "",
        loading: "lazy",
        width: "112",
        height: "84",
      });
      item.append(image);
    }
    return item;
  };

  const showMore = async () => {
    const mine = turn;
    const next = await Promise.all(
      found.slice(shown, shown + shownAtOnce).map((each) => each.data()),
    );
    if (mine !== turn) return;
    list.append(...next.map(result));
    shown += next.length;
    more.hidden = shown >= found.length;
  };

  // As the trade types it: `#30` is number 30, and `.125` may stand as 0.125.
  const spoken = (words) => words.replace(/(^|\s)#(?=\d)/g, "$1No. ");
  const withZeros = (words) => words.replace(/(^|\s)\.(?=\d)/g, "$10.");

  const search = async () => {
    turn += 1;
    const mine = turn;
    const entries = new FormData(form);
    const words = String(entries.get("q") || "").trim();
    const filters = {};
    for (const name of names) {
      const value = entries.get(name);
      if (value) filters[name] = String(value);
    }
    const [by, way] = String(entries.get("order") || "").split(" ");
    const query = new URLSearchParams([...entries].filter(([, value]) => value));
    history.replaceState(null, "", `${location.pathname}${query.size ? `?${query}` : ""}`);
    if (!words && Object.keys(filters).length === 0 && !by) {
      count.textContent = "";
      list.replaceChildren();
      more.hidden = true;
      return;
    }
    const options = { filters, sort: by ? { [by]: way } : {} };
    const asked = spoken(words);
    let answer = await index.search(asked || null, options);
    if (mine !== turn) return;
    if (answer.results.length === 0 && withZeros(asked) !== asked) {
      answer = await index.search(withZeros(asked), options);
      if (mine !== turn) return;
    }
    found = answer.results;
    shown = 0;
    list.replaceChildren();
    count.textContent =
      found.length === 0
        ? "No sheet has it. Fewer words or filters find more."
        : `${found.length} ${found.length === 1 ? "sheet" : "sheets"}`;
    await showMore();
  };

  const fill = (select, values) => {
    for (const [value, sheets] of Object.entries(values)) {
      select.append(element("option", `${value} (${sheets})`, { value }));
    }
  };

  const start = async () => {
    index = await import(new URL("pagefind/pagefind.js", root).href);
    await index.options({ excerptLength: 24 });
    await index.init();
    const filters = await index.filters();
    for (const name of names) {
      const select = form.elements.namedItem(name);
      fill(select, filters[name] || {});
      select.closest(".field").hidden = select.options.length < 2;
    }
    const asked = new URLSearchParams(location.search);
    for (const [name, value] of asked) {
      const field = form.elements.namedItem(name);
      if (field) field.value = value;
    }
    box.hidden = false;
    document.querySelector(".unsearched")?.remove();
    if (asked.size > 0) await search();
  };

  let wait;
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    search();
  });
  form.addEventListener("input", () => {
    clearTimeout(wait);
    wait = setTimeout(search, 150);
  });
  more.querySelector("button")?.addEventListener("click", showMore);
  // Opened as a file, or without the index, the lists and the line above them say enough.
  if (location.protocol.startsWith("http")) start().catch(() => {});
})();
