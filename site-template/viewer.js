// Shows one photo at a time; the arrow keys go to the others. Without this script the links open the photo itself.
(function () {
  "use strict";
  var links = Array.prototype.slice.call(document.querySelectorAll(".photo .plate > a"));
  if (!links.length || typeof HTMLDialogElement === "undefined") return;
  var dialog, picture, words, count, at = 0;

  function button(text, label, step) {
    var made = document.createElement("button");
    made.type = "button";
    made.textContent = text;
    made.setAttribute("aria-label", label);
    made.addEventListener("click", step);
    return made;
  }

  function build() {
    dialog = document.createElement("dialog");
    dialog.className = "viewer";
    dialog.setAttribute("aria-label", "Photo");
    picture = document.createElement("img");
    words = document.createElement("p");
    count = document.createElement("span");
    count.setAttribute("aria-live", "polite");
    var bar = document.createElement("div");
    bar.className = "viewer-bar";
    bar.append(button("←", "Previous photo", function () { show(at - 1); }), count, button("→", "Next photo", function () { show(at + 1); }), button("Close", "Close the photo", function () { dialog.close(); }));
    dialog.append(picture, words, bar);
    dialog.addEventListener("keydown", function (event) {
      var step = { ArrowLeft: -1, ArrowRight: 1, Home: -at, End: links.length - 1 - at }[event.key];
      if (step === undefined) return;
      event.preventDefault();
      show(at + step);
    });
    dialog.addEventListener("click", function (event) { if (event.target === dialog) dialog.close(); });
    dialog.addEventListener("close", function () { links[at].focus(); });
    document.body.append(dialog);
  }

  function show(index) {
    at = (index + links.length) % links.length;
    var image = links[at].querySelector("img"), caption = links[at].closest("figure").querySelector("figcaption");
    picture.src = links[at].href;
    picture.alt = image.alt;
    words.textContent = caption ? caption.textContent.trim() : "";
    count.textContent = (at + 1) + " of " + links.length;
  }

  links.forEach(function (link, index) {
    link.addEventListener("click", function (event) {
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.button) return;
      event.preventDefault();
      if (!dialog) build();
      show(index);
      dialog.showModal();
    });
  });
})();
