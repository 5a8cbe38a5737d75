// Buttons that copy the text of an element: <button hidden data-copy="ID" data-copied="…"
// data-failed="…">. Without scripts they stay hidden, and the text is there to be selected.
const heard = document.getElementById("copied");

for (const button of document.querySelectorAll("button[data-copy]")) {
  const label = button.textContent;
  button.hidden = false;
  button.addEventListener("click", async () => {
    const text = document.getElementById(button.dataset.copy).textContent;
    let said = button.dataset.copied;
    try {
      await navigator.clipboard.writeText(text);
    } catch {
      said = button.dataset.failed;
    }
    button.textContent = said;
    if (heard) {
      heard.textContent = said;
    }
    setTimeout(() => {
      button.textContent = label;
    }, 3000);
  });
}
