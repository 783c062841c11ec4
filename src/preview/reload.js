// Runs in served pages only: listens to the server, shows the page anew when there is something new to see, and lays what
// is wrong with the content over it. In a function, so that no name meets one of the page's own scripts.
(() => {
  const mark = document.currentScript?.dataset.mark ?? "";
  const renewal = globalThis.trustedTypes?.createPolicy("renewal", { createHTML: (page) => page });
  const news = new EventSource(`/_serve/news?${new URLSearchParams({ path: location.pathname, mark })}`);

  news.addEventListener("changed", async () => {
    // The next page has its own.
    news.close();
    try {
      // To load a page again takes a browser a tenth of a second: its words and drawings are there before, its scripts after.
      const response = await fetch(location.href, { cache: "no-store" });
      const page = await response.text();
      const fresh = new DOMParser().parseFromString(renewal?.createHTML(page) ?? page, "text/html");
      document.title = fresh.title;
      document.body.replaceWith(document.adoptNode(fresh.body));
    } finally {
      location.reload();
    }
  });

  news.addEventListener("problems", (event) => {
    const { title, text, hasError } = JSON.parse(event.data);
    document.querySelector("#serve-notice")?.remove();
    if (text === "") return;
    const notice = document.createElement("details");
    notice.id = "serve-notice";
    notice.open = hasError;
    notice.setAttribute("role", "alert");
    const summary = document.createElement("summary");
    summary.textContent = title;
    const report = document.createElement("pre");
    report.textContent = text;
    notice.append(summary, report);
    document.body.prepend(notice);
  });

  // A page that comes back from the history is as old as it was; a new one asks again.
  addEventListener("pageshow", (event) => {
    if (event.persisted) location.reload();
  });
  addEventListener("pagehide", () => news.close());
})();
