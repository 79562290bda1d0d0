// Marks the page as answering to clicks.
export function alive() {
  document.documentElement.dataset.alive = 'yes';
}

// Copies text; answers whether the browser allowed it.
export async function copyText(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
