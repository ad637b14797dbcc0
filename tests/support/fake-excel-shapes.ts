import type { Member } from "./fake-excel-objects";
import { refuseProtected } from "./fake-excel-protection";
import type { Shape, Sheet } from "./fake-excel-sheet";

let made = 0;

/** Excel draws a picture anew, so its bytes are others than those that were placed. */
const drawnAnew = (base64: string): string => btoa(`${atob(base64)} drawn anew`);

function shapeMember(sheet: Sheet, shape: Shape): Member {
  return Object.assign(shape as Shape & Member, {
    getAsImage: () => drawnAnew(shape.base64),
    delete: () => {
      refuseProtected(sheet);
      sheet.shapes = sheet.shapes.filter((one) => one !== shape);
    },
  });
}

/** The shapes of a sheet; new ones are named as Excel does and lie at its corner. */
export function shapes(sheet: Sheet): Member {
  return {
    items: () => sheet.shapes.map((shape) => shapeMember(sheet, shape)),
    item: (id: string) => shapeMember(sheet, sheet.shapes.find((shape) => shape.id === id)!),
    addImage: (base64: string) => {
      refuseProtected(sheet);
      made += 1;
      const shape: Shape = {
        id: String(made),
        type: "Image",
        name: `Picture ${made}`,
        altTextDescription: "",
        lockAspectRatio: true,
        left: 0,
        top: 0,
        width: 96,
        height: 96,
        base64,
      };
      sheet.shapes.push(shape);
      return shapeMember(sheet, shape);
    },
  };
}
