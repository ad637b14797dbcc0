/** Dots a picture's pixel, so that it prints sharply. */
const DENSITY = 2;

/** A picture as PNG, with its size as shown [px]. */
export interface Png {
  bytes: Uint8Array;
  width: number;
  height: number;
}

/** Draws an SVG that is on the page into a PNG, without what is there to be dragged. */
export async function pngOf(svg: SVGSVGElement): Promise<Png> {
  const { width, height } = svg.viewBox.baseVal;
  const copy = svg.cloneNode(true) as SVGSVGElement;
  for (const part of copy.querySelectorAll(".handles")) part.remove();
  copy.removeAttribute("style");
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(copy))}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = width * DENSITY;
  canvas.height = height * DENSITY;
  canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  if (!blob) throw new Error("The picture could not be drawn");
  return { bytes: new Uint8Array(await blob.arrayBuffer()), width, height };
}
