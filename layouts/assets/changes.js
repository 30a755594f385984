// Says how much is new since the reader last said that all was seen. Only the reader's press of the
// button keeps anything, one number in this browser; without a script the list is all there is.
(() => {
  const box = document.querySelector(".since");
  const says = box?.querySelector("[role=status]");
  const [keep, forget] = box?.querySelectorAll("button") ?? [];
  if (!box || !says || !keep || !forget) return;

  const name = `seen ${location.pathname}`;
  const total = Number(box.dataset.total);
  const items = [...document.querySelectorAll(".changes li")];

  const seen = () => {
    const kept = localStorage.getItem(name);
    return kept === null ? undefined : Number(kept);
  };

  const show = () => {
    const before = seen();
    const fresh = before === undefined ? 0 : Math.max(0, total - before);
    for (const [index, item] of items.entries()) {
      item.querySelector("mark")?.remove();
      if (index >= fresh) continue;
      const mark = document.createElement("mark");
      mark.textContent = "new to you";
      item.append(mark);
    }
    says.textContent =
      before === undefined
        ? "Nothing is remembered of what you have seen."
        : fresh === 0
          ? "Nothing has changed since you had seen all."
          : `${fresh} ${fresh === 1 ? "change" : "changes"} since you had seen all.`;
    forget.hidden = before === undefined;
    box.hidden = false;
  };

  keep.addEventListener("click", () => {
    localStorage.setItem(name, String(total));
    show();
  });
  forget.addEventListener("click", () => {
    localStorage.removeItem(name);
    show();
    keep.focus();
  });
  try {
    show();
  } catch {
    // A browser that keeps nothing for pages has the list, and no more is promised.
  }
})();
