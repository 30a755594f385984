// A photograph over the whole window, with its words, and the ones before and after it on the page.
// Without this script the link opens the picture itself, which is as large.
(() => {
  const links = [...document.querySelectorAll(".photo > a")];
  if (links.length === 0 || typeof HTMLDialogElement === "undefined") return;

  const element = (name, attributes = {}, ...children) => {
    const made = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    made.append(...children);
    return made;
  };
  const button = (text, press) => {
    const made = element("button", { type: "button" }, text);
    made.addEventListener("click", press);
    return made;
  };

  let at = 0;
  const place = element("div", { class: "place" });
  const words = element("p", { role: "status" });
  const before = button("Before", () => show(at - 1));
  const after = button("After", () => show(at + 1));
  const close = button("Close", () => view.close());
  const view = element(
    "dialog",
    { class: "view", "aria-label": "Photograph" },
    place,
    element("div", { class: "bar" }, words, before, after, close),
  );

  const show = (index) => {
    if (index < 0 || index >= links.length) return;
    at = index;
    const picture = links[at].querySelector("picture").cloneNode(true);
    for (const each of picture.querySelectorAll("[sizes]")) each.setAttribute("sizes", "100vw");
    const image = picture.querySelector("img");
    image.setAttribute("loading", "eager");
    place.replaceChildren(picture);
    const caption = links[at].closest("figure").querySelector("figcaption > span:last-child");
    const says = caption?.firstChild?.textContent?.trim() || image.alt;
    words.textContent = `${at + 1} of ${links.length}: ${says}`;
    // A button that is gone cannot keep the focus.
    if (at === 0 && document.activeElement === before) after.focus();
    if (at === links.length - 1 && document.activeElement === after) before.focus();
    before.disabled = at === 0;
    after.disabled = at === links.length - 1;
  };

  for (const [index, link] of links.entries()) {
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
      event.preventDefault();
      if (!view.isConnected) document.body.append(view);
      view.showModal();
      show(index);
      close.focus();
    });
  }
  view.addEventListener("keydown", ({ key }) => {
    if (key === "ArrowLeft") show(at - 1);
    if (key === "ArrowRight") show(at + 1);
  });
  view.addEventListener("close", () => {
    place.replaceChildren();
    links[at].focus();
  });
})();
