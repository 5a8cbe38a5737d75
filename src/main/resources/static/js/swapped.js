// A part that is swapped in place may change the address, which every printed sheet names: the part
// carries it in data-address, and from there it goes to the root element and to the title block.
const tell = () => {
  const part = document.querySelector("main [data-address]");
  if (part) {
    document.documentElement.dataset.address = part.dataset.address;
    const shown = document.querySelector(".title-block .wide .stamp");
    if (shown) shown.textContent = part.dataset.address;
  }
};
document.addEventListener("htmx:afterSettle", tell);
document.addEventListener("htmx:historyRestore", tell);
// An answer that has no such part (a closed session, a failure) is shown as the page that it is.
document.addEventListener("htmx:beforeSwap", (event) => {
  if (event.detail.xhr.status > 400) {
    event.detail.shouldSwap = false;
    location.assign(event.detail.pathInfo.requestPath);
  }
});
