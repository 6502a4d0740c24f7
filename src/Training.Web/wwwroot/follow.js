// Follows a page that changes while it is open: what is marked so is fetched again and put in place, where the reader stands.
const pause = 2000;

async function look() {
  const answer = await fetch(window.location.href, { headers: { accept: "text/html" } });
  if (!answer.ok) return;
  const fresh = new DOMParser().parseFromString(await answer.text(), "text/html").querySelector("[data-follow]");
  const shown = document.querySelector("[data-follow]");
  if (fresh && shown && fresh.innerHTML !== shown.innerHTML) shown.replaceWith(fresh);
}

async function follow() {
  // A server that is started again is looked for again, too. A tab that nobody sees asks for nothing: it would keep a sign-in alive.
  try {
    if (!document.hidden) await look();
  } catch {
    // Nothing to do until the next look.
  }

  setTimeout(follow, pause);
}

setTimeout(follow, pause);
