const { extname } = require("node:path");
const { transform } = require("esbuild");

/** Takes the types out of a module; `npm run check` reads them. */
module.exports = function (source) {
  const done = this.async();
  const asked = {
    loader: extname(this.resourcePath).slice(1),
    jsx: "automatic",
    target: "es2022",
    sourcefile: this.resourcePath,
    sourcemap: this.sourceMap,
  };
  transform(source, asked).then(({ code, map }) => done(null, code, map && JSON.parse(map)), done);
};
