/**
 * The grid's packages set each field of each object through a helper that ends in Object.defineProperty, which took a
 * seventh of every calculation: here it is set as any property.
 */
module.exports = (source) => source.replaceAll(/\b_defineProperty\(this, "([\w$]+)", /g, "(this.$1 = ");
