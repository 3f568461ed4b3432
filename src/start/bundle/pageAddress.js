/**
 * A webpack loader for files that ask where they lie: on a page that is the page's address. Left to itself, the bundler
 * would write the path of the building machine.
 */
export default function load(source) {
  return source.replaceAll("import.meta.url", "self.location.href");
}
